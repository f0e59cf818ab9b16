package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** A form: labels left, fields right, headings between; as wide as its scroll pane, scrolled only downwards. */
public final class FormPane extends JPanel implements Scrollable {
    private static final int SCROLL_STEP = 32;

    private int rows;

    public FormPane(String name) {
        super(new GridBagLayout());
        setName(name);
        setOpaque(false);
    }

    /** A heading over the rows that follow. */
    public FormPane heading(String words) {
        Heading heading = new Heading(words);
        int above = rows == 0 ? 0 : Spacing.APART;
        add(heading, place(0, 2, 1, new Insets(above, 0, Spacing.TIGHT, 0)));
        rows++;
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
        GridBagConstraints left = place(0, 1, 0, new Insets(Spacing.TIGHT, 0, 0, Spacing.NEAR));
        left.anchor = GridBagConstraints.BASELINE_LEADING;
        add(name, left);
        GridBagConstraints right = place(1, 1, 1, new Insets(Spacing.TIGHT, 0, 0, 0));
        right.anchor = GridBagConstraints.BASELINE_LEADING;
        add(field, right);
        rows++;
        return this;
    }

    /** Something over the whole width. */
    public FormPane wide(JComponent part) {
        add(part, place(0, 2, 1, new Insets(Spacing.TIGHT, 0, 0, 0)));
        rows++;
        return this;
    }

    /** Takes up what height is left below. */
    public FormPane end() {
        GridBagConstraints rest = place(0, 2, 1, new Insets(0, 0, 0, 0));
        rest.weighty = 1;
        JPanel filler = new JPanel();
        filler.setOpaque(false);
        filler.setPreferredSize(new Dimension(0, 0));
        add(filler, rest);
        rows++;
        return this;
    }

    private GridBagConstraints place(int column, int width, double weight, Insets space) {
        GridBagConstraints at = new GridBagConstraints();
        at.gridx = column;
        at.gridy = rows;
        at.gridwidth = width;
        at.weightx = weight;
        at.fill = GridBagConstraints.HORIZONTAL;
        at.anchor = GridBagConstraints.LINE_START;
        at.insets = space;
        return at;
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
