package org.taperwright.workbench.ui;

import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JLabel;

/** A label in a row of fields, a little wider than measured, because text at a fractional scale can be. */
public final class RowLabel extends JLabel {
    private static final int SPARE = 3;

    /** A label by itself. */
    public RowLabel(String words) {
        super(words);
    }

    /** A label of a field. */
    public RowLabel(String words, JComponent field) {
        super(words);
        setLabelFor(field);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension natural = super.getPreferredSize();
        return new Dimension(natural.width + SPARE, natural.height);
    }
}
