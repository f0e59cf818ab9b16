package org.taperwright.comparer.ui;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.taperwright.mechanics.comparison.Dominance;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.RatioEllipse;
import org.taperwright.mechanics.comparison.TradeOff;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** Draws what stands on the map: axes, bands, the path of a trial, markers and labels. */
final class MapPainting {
    static final double RING = 17;

    private static final double MARKER = 9;
    private static final double SMALLEST = 0.55;
    private static final double LARGEST = 2;
    /** Widest label, as a share of the map's width. */
    private static final double WIDEST_LABEL = 0.7;

    private static final double LABEL_GROUND = 0.82;
    private static final double BAND_OPACITY = 0.55;
    private static final double FILL_OPACITY = 0.10;
    private static final int ELLIPSE_POINTS = 72;

    private final Graphics2D g;
    private final MapFrame frame;

    MapPainting(Graphics2D g, MapFrame frame) {
        this.g = g;
        this.frame = frame;
    }

    /** The axes and their titles. */
    void axes(MapAxes axes, int height) {
        FontMetrics metrics = g.getFontMetrics();
        Rectangle2D area = frame.area();
        for (double tick : frame.across().ticks(area.getWidth(), metrics.stringWidth("0.00") + Spacing.NEAR)) {
            double x = area.getX() + frame.across().share(tick) * area.getWidth();
            if (x >= area.getX() - 0.5 && x <= area.getMaxX() + 0.5) {
                rule(new Line2D.Double(x, area.getY(), x, area.getMaxY()), tick == 1);
                String text = LogAxis.words(tick);
                g.drawString(
                        text,
                        (float) (x - metrics.stringWidth(text) / 2.0),
                        (float) area.getMaxY() + Spacing.TIGHT + metrics.getAscent());
            }
        }
        for (double tick : frame.up().ticks(area.getHeight(), metrics.getHeight())) {
            double y = area.getMaxY() - frame.up().share(tick) * area.getHeight();
            if (y >= area.getY() - 0.5 && y <= area.getMaxY() + 0.5) {
                rule(new Line2D.Double(area.getX(), y, area.getMaxX(), y), tick == 1);
                String text = LogAxis.words(tick);
                g.drawString(text, (float) area.getX() - Spacing.TIGHT - metrics.stringWidth(text), (float)
                        (y + metrics.getAscent() / 2.0 - 1));
            }
        }
        g.setColor(Ink.text());
        centred(title(axes.across()), area.getCenterX(), height - Spacing.NEAR);
        AffineTransform upright = g.getTransform();
        g.rotate(-Math.PI / 2);
        centred(title(axes.up()), -area.getCenterY(), Spacing.TIGHT + metrics.getAscent());
        g.setTransform(upright);
    }

    private static String title(Metric metric) {
        String index = metric.standing() == Standing.INDEX ? " (index)" : "";
        return metric.label() + index + ", ratio to datum";
    }

    private void rule(Line2D line, boolean atDatum) {
        g.setStroke(new BasicStroke(atDatum ? 1.2f : 0.7f));
        g.setColor(atDatum ? Ink.mix(Ink.text(), Ink.paper(), 0.5) : Ink.grid());
        g.draw(line);
        g.setColor(Ink.quiet());
    }

    private void centred(String text, double x, double y) {
        g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text) / 2.0), (float) y);
    }

    /** Where a point's marker stands. */
    Point2D place(MapPoint point) {
        return frame.at(point.across().value(), point.up().value());
    }

    /** Where both ratios lie together, or thin lines over the bands of both, through the marker. */
    void bands(MapPoint point) {
        point.ellipse().ifPresentOrElse(ellipse -> ellipse(point, ellipse), () -> bars(point));
    }

    private void ellipse(MapPoint point, RatioEllipse ellipse) {
        Path2D edge = new Path2D.Double();
        for (RatioEllipse.Ratios ratios : ellipse.edge(ELLIPSE_POINTS)) {
            Point2D place = frame.at(ratios.across(), ratios.up());
            if (edge.getCurrentPoint() == null) {
                edge.moveTo(place.getX(), place.getY());
            } else {
                edge.lineTo(place.getX(), place.getY());
            }
        }
        edge.closePath();
        g.setColor(Ink.translucent(point.look().colour(), FILL_OPACITY));
        g.fill(edge);
        g.setColor(Ink.translucent(point.look().colour(), BAND_OPACITY));
        g.setStroke(point.look().stroke(1.4f));
        g.draw(edge);
    }

    private void bars(MapPoint point) {
        Point2D place = place(point);
        Band across = band(point.across());
        Band up = band(point.up());
        Point2D low = frame.at(across.low(), up.low());
        Point2D high = frame.at(across.high(), up.high());
        g.setColor(Ink.translucent(point.look().colour(), BAND_OPACITY));
        g.setStroke(new BasicStroke(1.4f));
        g.draw(new Line2D.Double(low.getX(), place.getY(), high.getX(), place.getY()));
        g.draw(new Line2D.Double(place.getX(), low.getY(), place.getX(), high.getY()));
    }

    /** Where a design was while its parameter was moved, from a small ring at its beginning on. */
    void path(List<Point2D> ratios, SeriesLook look) {
        Path2D line = new Path2D.Double();
        g.setColor(look.colour());
        for (int i = 0; i < ratios.size(); i++) {
            Point2D place = frame.at(ratios.get(i).getX(), ratios.get(i).getY());
            if (i == 0) {
                line.moveTo(place.getX(), place.getY());
                g.setStroke(new BasicStroke(1.2f));
                g.draw(new Ellipse2D.Double(place.getX() - 4, place.getY() - 4, 8, 8));
            } else {
                line.lineTo(place.getX(), place.getY());
                g.fill(new Ellipse2D.Double(place.getX() - 1.5, place.getY() - 1.5, 3, 3));
            }
        }
        g.setStroke(look.stroke(1.2f));
        g.draw(line);
    }

    /** Names and roles, in room that no marker takes. */
    void labels(JComponent of, List<MapPoint> points) {
        FontMetrics metrics = g.getFontMetrics();
        Rectangle2D area = frame.area();
        List<MapPoint> seen =
                points.stream().filter(point -> area.contains(place(point))).toList();
        List<Point2D> places = seen.stream().map(this::place).toList();
        LabelPlaces room = new LabelPlaces(area, places, RING / 2 + 1);
        for (int i = 0; i < seen.size(); i++) {
            String name = ShortText.cut(of, metrics, seen.get(i).name(), area.getWidth() * WIDEST_LABEL);
            String role = seen.get(i).role();
            double width = Math.max(metrics.stringWidth(name), metrics.stringWidth(role));
            int lines = role.isEmpty() ? 1 : 2;
            Rectangle2D label = room.place(places.get(i), width, lines * metrics.getHeight());
            leader(places.get(i), label);
            // over thousands of dots a word needs ground of its own
            g.setColor(Ink.translucent(Ink.paper(), LABEL_GROUND));
            g.fill(new RoundRectangle2D.Double(
                    label.getX() - 3, label.getY(), label.getWidth() + 6, label.getHeight(), 6, 6));
            g.setColor(seen.get(i).look().colour());
            float baseline = (float) label.getY() + metrics.getAscent();
            g.drawString(name, (float) label.getX(), baseline);
            g.drawString(role, (float) label.getX(), baseline + metrics.getHeight());
        }
    }

    /** A thin line from a point to its label where the label could not stand right beside it. */
    private void leader(Point2D point, Rectangle2D label) {
        double x = Math.max(label.getX(), Math.min(label.getMaxX(), point.getX()));
        double y = Math.max(label.getY(), Math.min(label.getMaxY(), point.getY()));
        if (point.distance(x, y) > RING) {
            g.setColor(Ink.quiet());
            g.setStroke(new BasicStroke(0.7f));
            g.draw(new Line2D.Double(point.getX(), point.getY(), x, y));
        }
    }

    /** A marker: filled and ringed where surely undominated, ringed by dashes where possibly, else hollow. */
    void marker(MapPoint point, boolean chosen) {
        Point2D place = place(point);
        double size = MARKER
                * (point.size().isPresent()
                        ? Math.max(
                                SMALLEST,
                                Math.min(LARGEST, Math.sqrt(point.size().getAsDouble())))
                        : 1);
        Shape marker = AffineTransform.getTranslateInstance(place.getX(), place.getY())
                .createTransformedShape(point.look().marker(size));
        Dominance dominance = point.place().map(TradeOff.Place::dominance).orElse(Dominance.DOMINATED);
        g.setStroke(new BasicStroke(1.6f));
        g.setColor(dominance == Dominance.CERTAINLY_UNDOMINATED ? point.look().colour() : Ink.paper());
        g.fill(marker);
        g.setColor(point.look().colour());
        g.draw(marker);
        double ring = RING - MARKER + size;
        Shape around = new Ellipse2D.Double(place.getX() - ring / 2, place.getY() - ring / 2, ring, ring);
        ringed(dominance).ifPresent(stroke -> {
            g.setStroke(stroke);
            g.draw(around);
        });
        if (chosen) {
            g.setStroke(new BasicStroke(1));
            g.setColor(Ink.accent());
            g.draw(new Rectangle2D.Double(
                    place.getX() - ring / 2 - 3, place.getY() - ring / 2 - 3, ring + 6, ring + 6));
        }
    }

    /** The ring's stroke; a hollow marker without one is dominated. */
    private static Optional<Stroke> ringed(Dominance dominance) {
        return switch (dominance) {
            case CERTAINLY_UNDOMINATED -> Optional.of(new BasicStroke(1.2f));
            case POSSIBLY_UNDOMINATED ->
                Optional.of(new BasicStroke(
                        1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {3, 2.5f}, 0));
            case DOMINATED -> Optional.empty();
        };
    }

    static Band band(Reading ratio) {
        return ratio.band().orElseGet(() -> new Band(ratio.value(), ratio.value()));
    }
}
