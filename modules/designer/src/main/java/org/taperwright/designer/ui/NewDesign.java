package org.taperwright.designer.ui;

import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;

/** The design that a person begins with. */
final class NewDesign {
    private static final int SIZE = 25;
    private static final double TAPER = 0.02;

    private NewDesign() {}

    static Design standard() {
        return Redesign.name(Designs.standard(SIZE, TAPER), "New design");
    }
}
