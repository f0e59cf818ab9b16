package org.taperwright.workbench.ui;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The upright axis's title, and names at the ends of curves, moved apart where they would overlap, and beside separate spots. */
final class PlotLabels {
    private final Plot plot;
    private final FontMetrics metrics;

    PlotLabels(Plot plot, FontMetrics metrics) {
        this.plot = plot;
        this.metrics = metrics;
    }

    /** Turns a point in the axes' units into pixels. */
    @FunctionalInterface
    interface Placing {
        Point2D at(double x, double y);
    }

    /** Width of the widest name right of the axes; 0 where there is none. */
    double width() {
        return named().stream()
                .mapToInt(curve -> metrics.stringWidth(curve.name()))
                .max()
                .orElse(0);
    }

    /** Height of the upright axis's title above the axes; 0 where there is none. */
    double titleHeight() {
        return plot.y().heading().isEmpty() ? 0 : metrics.getHeight();
    }

    void draw(Graphics2D g, Rectangle2D area, Placing placing) {
        g.setFont(metrics.getFont());
        g.setColor(Ink.text());
        g.drawString(plot.y().heading(), Spacing.TIGHT, (float) area.getY() - metrics.getDescent() - Spacing.TIGHT);
        List<End> ends = new ArrayList<>();
        for (Plot.Curve curve : named()) {
            Plot.Spot last = last(curve);
            Point2D at = placing.at(last.x(), last.y());
            ends.add(new End(curve, at, at.getY()));
        }
        ends.sort(Comparator.comparingDouble(end -> end.y));
        spread(ends, area);
        for (End end : ends) {
            double left = area.getMaxX() + Spacing.NEAR;
            g.setColor(Ink.translucent(end.curve.look().colour(), 0.5));
            g.draw(new Line2D.Double(end.at.getX() + 1, end.at.getY(), left - 2, end.y));
            g.setColor(end.curve.look().colour());
            g.drawString(end.curve.name(), (float) left, (float) (end.y + metrics.getAscent() / 2.0 - 1));
        }
    }

    /** Moves names down where they overlap, then all up where the last leaves the area. */
    private void spread(List<End> ends, Rectangle2D area) {
        double step = metrics.getHeight();
        double above = Double.NEGATIVE_INFINITY;
        for (End end : ends) {
            end.y = Math.max(end.y, above + step);
            above = end.y;
        }
        double below = area.getMaxY() + step / 2;
        for (int i = ends.size() - 1; i >= 0; i--) {
            ends.get(i).y = Math.min(ends.get(i).y, below);
            below = ends.get(i).y - step;
        }
    }

    /** Where a curve ends; of separate spots, which may come in any order, the one furthest to the right. */
    private static Plot.Spot last(Plot.Curve curve) {
        return curve.style() == Plot.Style.SPOTS
                ? curve.spots().stream()
                        .max(Comparator.comparingDouble(Plot.Spot::x))
                        .orElseThrow()
                : curve.spots().get(curve.spots().size() - 1);
    }

    private List<Plot.Curve> named() {
        return plot.curves().stream()
                .filter(curve -> !curve.name().isEmpty() && !curve.spots().isEmpty())
                .toList();
    }

    /** A name and where it stands. */
    private static final class End {
        private final Plot.Curve curve;
        private final Point2D at;
        private double y;

        End(Plot.Curve curve, Point2D at, double y) {
            this.curve = curve;
            this.at = at;
            this.y = y;
        }
    }
}
