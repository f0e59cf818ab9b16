package org.taperwright.comparer.ui;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.stream.Collectors;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Drawing;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** Outlines laid over each other about the instrument's axis, with their circumscribed circles and a length to scale. */
final class SectionsDrawing extends Drawing {
    private static final double[] SCALE_LENGTHS = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2};

    private transient SectionsWork.Drawn drawn = new SectionsWork.Drawn(List.of(), false);
    private String remark = "";

    SectionsDrawing() {
        super("comparison.sections", "Sections to one scale");
        CopyMenu.on(this, "Sections");
    }

    void show(SectionsWork.Drawn newDrawn) {
        drawn = newDrawn;
        getAccessibleContext()
                .setAccessibleDescription(drawn.sections().stream()
                        .map(section -> section.name() + ": diameter " + Shown.number(section.diameterMm()) + " mm")
                        .collect(Collectors.joining("; ")));
        repaint();
    }

    void setRemark(String words) {
        remark = words;
        repaint();
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setFont(Ink.smallFont());
        FontMetrics metrics = g.getFontMetrics();
        if (drawn.sections().isEmpty()) {
            g.setColor(Ink.quiet());
            g.drawString("No blade reaches this level.", Spacing.APART, Spacing.APART + metrics.getAscent());
            return;
        }
        int legend = drawn.sections().size() * (metrics.getHeight() + 2) + Spacing.NEAR;
        double widest = drawn.sections().stream()
                .mapToDouble(SectionsDrawing.this::shownDiameter)
                .max()
                .orElse(1);
        double room = Math.min(
                getWidth() - 2.0 * Spacing.APART, getHeight() - legend - metrics.getHeight() - 3.0 * Spacing.APART);
        double pixelsPerUnit = Math.max(1, room) / widest;
        double x = getWidth() / 2.0;
        double y = Spacing.APART + room / 2;
        cross(g, x, y, room / 2 + Spacing.TIGHT);
        for (SectionsWork.OneSection section : drawn.sections()) {
            outline(g, section, x, y, shownDiameter(section) * pixelsPerUnit);
        }
        int below = (int) (Spacing.APART + room + Spacing.APART);
        if (!drawn.oneDiameter()) {
            scale(g, x, below, pixelsPerUnit, room);
        }
        legend(g, below + metrics.getHeight() + Spacing.NEAR);
        g.setColor(Ink.unusual());
        g.drawString(
                remark, getWidth() - Spacing.NEAR - metrics.stringWidth(remark), Spacing.TIGHT + metrics.getAscent());
    }

    private double shownDiameter(SectionsWork.OneSection section) {
        return drawn.oneDiameter() ? 1 : section.diameterMm();
    }

    private static void cross(Graphics2D g, double x, double y, double reach) {
        g.setColor(Ink.grid());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Line2D.Double(x - reach, y, x + reach, y));
        g.draw(new Line2D.Double(x, y - reach, x, y + reach));
    }

    private static void outline(Graphics2D g, SectionsWork.OneSection section, double x, double y, double diameter) {
        g.setStroke(new BasicStroke(0.7f));
        g.setColor(Ink.mix(section.look().colour(), Ink.paper(), 0.6));
        g.draw(new Ellipse2D.Double(x - diameter / 2, y - diameter / 2, diameter, diameter));
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(diameter, -diameter);
        g.setStroke(section.look().stroke(1.8f));
        g.setColor(section.look().colour());
        g.draw(place.createTransformedShape(OutlinePath.of(section.outline())));
    }

    private static void scale(Graphics2D g, double x, double y, double pixelsPerMm, double room) {
        double length = SCALE_LENGTHS[0];
        for (double candidate : SCALE_LENGTHS) {
            length = candidate * pixelsPerMm <= room / 2 ? candidate : length;
        }
        double half = length * pixelsPerMm / 2;
        g.setColor(Ink.text());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(x - half, y, x + half, y));
        g.draw(new Line2D.Double(x - half, y - 3, x - half, y + 3));
        g.draw(new Line2D.Double(x + half, y - 3, x + half, y + 3));
        String words = Shown.number(length) + " mm";
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(words, (float) (x - metrics.stringWidth(words) / 2.0), (float) y + metrics.getAscent() + 3);
    }

    private void legend(Graphics2D g, int top) {
        FontMetrics metrics = g.getFontMetrics();
        int y = top + metrics.getAscent();
        for (SectionsWork.OneSection section : drawn.sections()) {
            g.setColor(section.look().colour());
            g.setStroke(section.look().stroke(1.8f));
            double middle = y - metrics.getAscent() / 2.6;
            g.draw(new Line2D.Double(Spacing.APART, middle, Spacing.APART + 28, middle));
            g.setColor(Ink.text());
            g.drawString(
                    section.name() + ", d " + Shown.number(section.diameterMm()) + " mm",
                    Spacing.APART + 28 + Spacing.NEAR,
                    y);
            y += metrics.getHeight() + 2;
        }
    }
}
