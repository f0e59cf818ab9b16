package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * A form: labels left, fields right, headings between. Fields take what width there is and keep the height they need; a
 * scroll pane around it scrolls only downwards.
 */
public final class FormPane extends JPanel implements Scrollable {
    private static final int SCROLL_STEP = 32;
    private static final String FOCUS_OWNER = "permanentFocusOwner";

    private final transient FormRows rows = new FormRows();
    private final transient PropertyChangeListener follow = event -> show(event.getNewValue());

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
    public void addNotify() {
        super.addNotify();
        focus().addPropertyChangeListener(FOCUS_OWNER, follow);
    }

    @Override
    public void removeNotify() {
        focus().removePropertyChangeListener(FOCUS_OWNER, follow);
        super.removeNotify();
    }

    private static KeyboardFocusManager focus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager();
    }

    /** Scrolls to the field that the keyboard has come to. */
    private void show(@Nullable Object focused) {
        if (focused instanceof JComponent field && SwingUtilities.isDescendingFrom(field, this)) {
            field.scrollRectToVisible(new Rectangle(field.getSize()));
        }
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
