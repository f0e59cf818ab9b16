package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;

/**
 * Sets components side by side at their preferred widths; when there is too little room the widest give way first, so
 * that nothing is cut off at the end.
 *
 * @param gap space between neighbours, px
 */
public record ShrinkingRow(int gap) implements LayoutManager {
    @Override
    public void addLayoutComponent(String name, Component component) {
        // places follow from the order of the components alone
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // places follow from the order of the components alone
    }

    @Override
    public Dimension preferredLayoutSize(Container row) {
        return size(row, true);
    }

    @Override
    public Dimension minimumLayoutSize(Container row) {
        return size(row, false);
    }

    private Dimension size(Container row, boolean preferred) {
        int width = 0;
        int height = 0;
        for (Component component : row.getComponents()) {
            Dimension size = preferred ? component.getPreferredSize() : component.getMinimumSize();
            width += size.width + gap;
            height = Math.max(height, component.getPreferredSize().height);
        }
        Insets insets = row.getInsets();
        return new Dimension(
                Math.max(0, width - gap) + insets.left + insets.right, height + insets.top + insets.bottom);
    }

    @Override
    public void layoutContainer(Container row) {
        Insets insets = row.getInsets();
        int count = row.getComponentCount();
        int room = row.getWidth() - insets.left - insets.right - Math.max(0, count - 1) * gap;
        int widest = widest(row, room);
        int x = insets.left;
        for (Component component : row.getComponents()) {
            int width = Math.min(component.getPreferredSize().width, widest);
            component.setBounds(x, insets.top, width, row.getHeight() - insets.top - insets.bottom);
            x += width + gap;
        }
    }

    /** The greatest width a component may have so that all together fit. */
    private static int widest(Container row, int room) {
        int[] widths = new int[row.getComponentCount()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = row.getComponent(i).getPreferredSize().width;
        }
        java.util.Arrays.sort(widths);
        int left = room;
        for (int i = 0; i < widths.length; i++) {
            int share = left / (widths.length - i);
            if (widths[i] > share) {
                return Math.max(0, share);
            }
            left -= widths[i];
        }
        return Integer.MAX_VALUE;
    }
}
