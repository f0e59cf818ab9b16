package org.taperwright.workbench.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.function.Supplier;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultCaret;

/** Running text that wraps at whatever width it is given, in the theme's font and a colour that follows the theme. */
public final class Prose extends JTextArea {
    private static final int NARROWEST = 96;

    private final transient Supplier<Color> colour;
    private final boolean small;

    public Prose(String text, Supplier<Color> colour, boolean small) {
        super();
        setCaret(new StillCaret());
        setText(text);
        this.colour = colour;
        this.small = small;
        setLineWrap(true);
        setWrapStyleWord(true);
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setBorder(null);
        dress();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (colour != null) {
            dress();
        }
    }

    private void dress() {
        setBorder(null);
        setOpaque(false);
        setFont(small ? Ink.smallFont() : Ink.font());
        setForeground(colour.get());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(NARROWEST, super.getPreferredSize().height);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean reflow = width != getWidth();
        super.setBounds(x, y, width, height);
        // The height follows from the width, which only now is known: ask to be laid out once more.
        if (reflow && getPreferredSize().height != height) {
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    /** A caret that nobody sees, and for which nothing is scrolled: not for a new text, nor once the first is laid out. */
    private static final class StillCaret extends DefaultCaret {
        @Override
        protected void adjustVisibility(Rectangle place) {
            // what this stands in stays where a person left it
        }
    }
}
