package org.taperwright.mechanics.comparison.sweep;

import java.util.List;
import org.taperwright.mechanics.design.Design;

/** Something of a design that can be moved by itself: an amount within a range, or a choice among a few. */
public sealed interface DesignParameter permits Amount, Choice {
    /** The field in the words of the JSON form, such as {@code taper[0].taper}. */
    String id();

    /** Name for people, sentence case. */
    String label();

    /** Unit of an amount; empty for a plain number or a choice. */
    String unit();

    /** The design's own value in words, without the unit. */
    String words(Design design);

    /** Designs along the whole parameter, in its order: so many steps of an amount, every option of a choice. */
    List<Setting> settings(Design design, int count);

    /** Designs a little below and above, in the order of the parameter; every other option of a choice. */
    List<Setting> nearby(Design design);
}
