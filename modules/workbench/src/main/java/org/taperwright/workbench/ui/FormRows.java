package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager2;
import java.util.IdentityHashMap;
import java.util.Map;

/** Lays a form out from top to bottom: every part as wide as there is room and as high as it needs at that width. */
final class FormRows implements LayoutManager2 {
    private static final int NARROWEST_FIELD = 110;

    private final Map<Component, Place> places = new IdentityHashMap<>();

    /** Where a part stands; a label is followed by its field. */
    enum Place {
        HEADING,
        LABEL,
        FIELD,
        WIDE
    }

    @Override
    public void addLayoutComponent(Component part, Object place) {
        places.put(part, place instanceof Place given ? given : Place.WIDE);
    }

    @Override
    public void addLayoutComponent(String name, Component part) {
        places.put(part, Place.WIDE);
    }

    @Override
    public void removeLayoutComponent(Component part) {
        places.remove(part);
    }

    @Override
    public Dimension preferredLayoutSize(Container form) {
        Insets edge = form.getInsets();
        int width = Math.max(form.getWidth() - edge.left - edge.right, labelWidth(form) + NARROWEST_FIELD);
        int height = place(form, width, false);
        return new Dimension(
                labelWidth(form) + 2 * NARROWEST_FIELD + edge.left + edge.right, height + edge.top + edge.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container form) {
        Insets edge = form.getInsets();
        Dimension preferred = preferredLayoutSize(form);
        return new Dimension(labelWidth(form) + NARROWEST_FIELD + edge.left + edge.right, preferred.height);
    }

    @Override
    public Dimension maximumLayoutSize(Container form) {
        return new Dimension(Integer.MAX_VALUE, Integer.MAX_VALUE);
    }

    @Override
    public void layoutContainer(Container form) {
        Insets edge = form.getInsets();
        place(form, form.getWidth() - edge.left - edge.right, true);
    }

    @Override
    public float getLayoutAlignmentX(Container form) {
        return 0;
    }

    @Override
    public float getLayoutAlignmentY(Container form) {
        return 0;
    }

    @Override
    public void invalidateLayout(Container form) {
        // nothing is remembered
    }

    private int labelWidth(Container form) {
        int width = 0;
        for (Component part : form.getComponents()) {
            if (places.get(part) == Place.LABEL) {
                width = Math.max(width, part.getPreferredSize().width + Spacing.NEAR);
            }
        }
        return width;
    }

    /** Goes through the parts, placing them if asked to; the height they need. */
    private int place(Container form, int width, boolean really) {
        Insets edge = form.getInsets();
        int fieldX = labelWidth(form);
        int y = 0;
        Component[] parts = form.getComponents();
        for (int i = 0; i < parts.length; i++) {
            Component part = parts[i];
            Place place = places.getOrDefault(part, Place.WIDE);
            if (!part.isVisible() || place == Place.LABEL) {
                continue;
            }
            int gap = place == Place.HEADING ? Spacing.APART : Spacing.TIGHT;
            y += y == 0 ? 0 : gap;
            int x = place == Place.FIELD ? fieldX : 0;
            int height = part.getPreferredSize().height;
            if (really) {
                part.setBounds(edge.left + x, edge.top + y, Math.max(0, width - x), height);
                if (place == Place.FIELD) {
                    label(parts[i - 1], edge.left, edge.top + y, fieldX, part);
                }
            }
            y += height;
        }
        return y;
    }

    private static void label(Component label, int x, int y, int width, Component field) {
        Dimension size = label.getPreferredSize();
        int fieldBaseline = baseline(field);
        int own = label.getBaseline(size.width, size.height);
        int down = fieldBaseline >= 0 && own >= 0 ? fieldBaseline - own : Spacing.TIGHT;
        label.setBounds(x, y + Math.max(0, down), width - Spacing.NEAR, size.height);
    }

    /** A field's baseline; a row of several parts has that of its first. */
    private static int baseline(Component field) {
        int own = field.getBaseline(field.getWidth(), field.getHeight());
        boolean row = own < 0 && field instanceof Container container && container.getComponentCount() > 0;
        return row ? ((Container) field).getComponent(0).getBaseline(field.getWidth(), field.getHeight()) : own;
    }
}
