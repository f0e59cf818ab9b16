package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/**
 * A form: labels left, fields right, headings between. Fields take what width there is and keep the height they need; a
 * scroll pane around it scrolls only downwards.
 */
public final class FormPane extends JPanel implements Scrollable {
    private static final int SCROLL_STEP = 32;

    private final transient FormRows rows = new FormRows();

    public FormPane(String name) {
        setLayout(rows);
        setName(name);
        setOpaque(false);
    }

    /** A heading over the rows that follow. */
    public FormPane heading(String words) {
        add(new Heading(words), FormRows.Place.HEADING);
        return this;
    }

    /** A labelled field with an explanation as tooltip. */
    public FormPane row(String label, JComponent field, String explanation) {
        JLabel name = new FormLabel(label);
        name.setName(field.getName() + ".label");
        name.setLabelFor(field instanceof QuantityField quantity ? quantity.entry() : field);
        if (!explanation.isEmpty()) {
            name.setToolTipText(explanation);
            field.setToolTipText(explanation);
        }
        add(name, FormRows.Place.LABEL);
        add(field, FormRows.Place.FIELD);
        return this;
    }

    /** Something over the whole width. */
    public FormPane wide(JComponent part) {
        add(part, FormRows.Place.WIDE);
        return this;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return SCROLL_STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(SCROLL_STEP, visible.height - SCROLL_STEP);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        Component viewport = getParent();
        return viewport != null && viewport.getHeight() > getPreferredSize().height;
    }
}
