package org.taperwright.workbench.ui;

import java.awt.Dimension;
import javax.swing.JLabel;

/** A form's label, at least so wide that the fields of several forms below each other stand in one column. */
final class FormLabel extends JLabel {
    private static final double WIDTH_IN_EMS = 8.6;

    FormLabel(String words) {
        super(words);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension natural = super.getPreferredSize();
        // Two spare pixels, because text at a fractional scale can be a little wider than measured at 100 %.
        int width = Math.max(
                natural.width + 2, (int) Math.round(WIDTH_IN_EMS * getFont().getSize2D()));
        return new Dimension(width, natural.height);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }
}
