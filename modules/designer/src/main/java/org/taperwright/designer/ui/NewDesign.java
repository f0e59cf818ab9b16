package org.taperwright.designer.ui;

import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSizes;

/** The design that a person begins with. */
final class NewDesign {
    private static final int SIZE = 25;

    private NewDesign() {}

    static Design standard() {
        return Designs.with(Designs.standard(SIZE, IsoSizes.STANDARD_TAPER))
                .name("New design")
                .design();
    }
}
