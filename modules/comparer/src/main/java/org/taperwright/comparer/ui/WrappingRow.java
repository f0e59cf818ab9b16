package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import javax.swing.SwingUtilities;

/** Lays components in rows from the left, beginning another row where one is full. */
record WrappingRow(int gap) implements LayoutManager {
    @Override
    public void addLayoutComponent(String name, Component component) {
        // places follow from the order alone
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // nothing is kept
    }

    @Override
    public Dimension preferredLayoutSize(Container row) {
        int width = row.getWidth() > 0 ? row.getWidth() : widest(row);
        return new Dimension(widest(row), laid(row, width, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container row) {
        int width = row.getWidth() > 0 ? row.getWidth() : widest(row);
        return new Dimension(widest(row), laid(row, width, false));
    }

    @Override
    public void layoutContainer(Container row) {
        int height = laid(row, row.getWidth(), true);
        if (height != row.getHeight()) {
            // the height follows from the width, which only now is known: ask to be laid out once more
            SwingUtilities.invokeLater(row::revalidate);
        }
    }

    private static int widest(Container row) {
        int widest = 0;
        for (Component component : row.getComponents()) {
            widest = Math.max(widest, component.getPreferredSize().width);
        }
        return widest + row.getInsets().left + row.getInsets().right;
    }

    private int laid(Container row, int width, boolean place) {
        Insets insets = row.getInsets();
        int x = insets.left;
        int y = insets.top;
        int line = 0;
        for (Component component : row.getComponents()) {
            if (!component.isVisible()) {
                continue;
            }
            Dimension size = component.getPreferredSize();
            if (x > insets.left && x + size.width > width - insets.right) {
                x = insets.left;
                y += line + gap;
                line = 0;
            }
            if (place) {
                component.setBounds(x, y, Math.min(size.width, width - insets.right - x), size.height);
            }
            x += size.width + gap;
            line = Math.max(line, size.height);
        }
        return y + line + insets.bottom;
    }
}
