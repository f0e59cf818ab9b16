package org.taperwright.catalogue.ui;

import java.util.Locale;
import org.taperwright.mechanics.design.SizeColour;

/** The word of a size's colour. */
final class Colours {
    private Colours() {}

    static String word(SizeColour colour) {
        return colour.name().toLowerCase(Locale.ROOT);
    }
}
