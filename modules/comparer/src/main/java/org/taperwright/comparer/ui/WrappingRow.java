package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;
import javax.swing.SwingUtilities;

/**
 * Lays components in rows from the left, beginning another row where one is full. Until its width is known it asks for the
 * height of one row.
 */
final class WrappingRow implements LayoutManager {
    private static final int UNKNOWN = Short.MAX_VALUE;

    private final int gap;
    private int askedAt;

    WrappingRow(int gap) {
        this.gap = gap;
    }

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
        return new Dimension(widest(row), laid(row, row.getWidth() > 0 ? row.getWidth() : UNKNOWN, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container row) {
        return new Dimension(widest(row), laid(row, row.getWidth() > 0 ? row.getWidth() : UNKNOWN, false));
    }

    @Override
    public void layoutContainer(Container row) {
        int height = laid(row, row.getWidth(), true);
        // the height follows from the width, which only now is known: ask, once for each width, to be laid out once
        // more
        if (height != row.getHeight() && row.getWidth() != askedAt && row.isShowing()) {
            askedAt = row.getWidth();
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
        int y = insets.top;
        List<Component> line = new ArrayList<>();
        int x = insets.left;
        for (Component component : row.getComponents()) {
            if (component.isVisible()) {
                int wide = component.getPreferredSize().width;
                if (!line.isEmpty() && x + wide > width - insets.right) {
                    y += line(line, insets.left, y, width - insets.right, place) + gap;
                    line.clear();
                    x = insets.left;
                }
                line.add(component);
                x += wide + gap;
            }
        }
        return y + line(line, insets.left, y, width - insets.right, place) + insets.bottom;
    }

    /** Places one row, each component in its middle; gives the row's height. */
    private int line(List<Component> line, int left, int top, int right, boolean place) {
        int height = line.stream()
                .mapToInt(component -> component.getPreferredSize().height)
                .max()
                .orElse(0);
        int x = left;
        for (Component component : line) {
            Dimension size = component.getPreferredSize();
            if (place) {
                component.setBounds(x, top + (height - size.height) / 2, Math.min(size.width, right - x), size.height);
            }
            x += size.width + gap;
        }
        return height;
    }
}
