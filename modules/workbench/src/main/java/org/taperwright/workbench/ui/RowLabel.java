package org.taperwright.workbench.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;

/** A label in a row of fields, a little wider than measured, because text at a fractional scale can be. */
public final class RowLabel extends JLabel {
    private static final int SPARE = 3;

    private transient Optional<Supplier<Color>> tone = Optional.empty();

    /** A label by itself. */
    public RowLabel(String words) {
        super(words);
    }

    /** A label of a field. */
    public RowLabel(String words, JComponent field) {
        super(words);
        setLabelFor(field);
    }

    /** Gives it a colour that is asked anew at each painting, so that it follows the theme. */
    public RowLabel tone(Supplier<Color> colour) {
        tone = Optional.of(colour);
        repaint();
        return this;
    }

    @Override
    public Color getForeground() {
        // the label above asks before this one's fields are there
        return tone == null ? super.getForeground() : tone.map(Supplier::get).orElseGet(super::getForeground);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension natural = super.getPreferredSize();
        return new Dimension(natural.width + SPARE, natural.height);
    }
}
