package org.taperwright.workbench.ui;

import javax.swing.BorderFactory;
import javax.swing.border.Border;

/** The one grid that every window keeps, px at 100 % scale. */
public final class Spacing {
    /** Between things that belong together, such as a field and its fault. */
    public static final int TIGHT = 4;
    /** Between neighbours, such as a label and its field. */
    public static final int NEAR = 8;
    /** Between groups and at a window's edge. */
    public static final int APART = 16;

    private Spacing() {}

    /** Empty space on all sides. */
    public static Border around(int size) {
        return BorderFactory.createEmptyBorder(size, size, size, size);
    }

    /** Empty space above and below, left and right. */
    public static Border around(int vertical, int horizontal) {
        return BorderFactory.createEmptyBorder(vertical, horizontal, vertical, horizontal);
    }
}
