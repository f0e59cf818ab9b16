package org.taperwright.comparer.ui;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.DataTable;
import org.taperwright.workbench.ui.Drawing;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/**
 * The map of flexibility against cutting, both as ratios to the datum on logarithmic axes, with lines over the 5 to 95 % bands
 * of both. A design that no other
 * dominates has a filled marker within a ring and the word beside its name; the others have hollow markers.
 */
final class TradeOffMap extends Drawing {
    private static final double MARKER = 9;
    private static final double RING = 17;
    /** Widest label, as a share of the map's width. */
    private static final double WIDEST_LABEL = 0.7;

    /** Bands that reach farther than this are cut off by the axes. */
    private static final double FARTHEST_BAND = 4;

    private static final double BAND_OPACITY = 0.55;

    private transient List<MapPoint> points = List.of();
    private String nothing = "";
    private String remark = "";

    TradeOffMap() {
        super("comparison.map", "Map of flexibility against cutting, ratios to the datum");
        setPreferredSize(new Dimension(360, 320));
        CopyMenu.on(this, "Flexibility against cutting", this::numbers);
        setToolTipText(
                "<html>Both as ratios to the datum, on logarithmic axes; further up and to the right is more of "
                        + "both; lines: 5 to 95 % of the ratios.<br>Undominated (ringed, filled): no other is at least as good in both and better in one.");
    }

    /** Shows points. */
    void show(List<MapPoint> newPoints) {
        points = List.copyOf(newPoints);
        nothing = "No ratios: the datum cannot be computed.";
        getAccessibleContext()
                .setAccessibleDescription(points.stream()
                        .map(point -> point.words() + ": flexibility " + words(point.flexibility()) + ", cutting "
                                + words(point.cutting()))
                        .collect(Collectors.joining("; ")));
        repaint();
    }

    /** A word in the corner, such as "outdated". */
    void setRemark(String words) {
        remark = words;
        repaint();
    }

    private DataTable numbers() {
        return new DataTable(
                List.of(
                        "design",
                        "flexibility, ratio to datum",
                        "flexibility, low",
                        "flexibility, high",
                        "cutting, ratio to datum",
                        "cutting, low",
                        "cutting, high",
                        "undominated"),
                points.stream()
                        .map(point -> List.of(
                                point.name(),
                                Double.toString(point.flexibility().value()),
                                Double.toString(band(point.flexibility()).low()),
                                Double.toString(band(point.flexibility()).high()),
                                Double.toString(point.cutting().value()),
                                Double.toString(band(point.cutting()).low()),
                                Double.toString(band(point.cutting()).high()),
                                point.undominated() ? "yes" : "no"))
                        .toList());
    }

    private static String words(Reading ratio) {
        return Shown.number(ratio.value())
                + ratio.band().map(band -> " (" + Shown.band(band) + ")").orElse("");
    }

    private static Band band(Reading ratio) {
        return ratio.band().orElseGet(() -> new Band(ratio.value(), ratio.value()));
    }

    /** The axis that holds ratios and, as far as it may, their bands. */
    private static LogAxis axis(List<Reading> ratios) {
        return LogAxis.of(ratios.stream().flatMapToDouble(ratio -> {
            double farthest = ratio.value() * FARTHEST_BAND;
            double nearest = ratio.value() / FARTHEST_BAND;
            return DoubleStream.of(
                    ratio.value(),
                    Math.max(nearest, band(ratio).low()),
                    Math.min(farthest, band(ratio).high()));
        }));
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setFont(Ink.smallFont());
        FontMetrics metrics = g.getFontMetrics();
        if (points.isEmpty()) {
            g.setColor(Ink.quiet());
            g.drawString(nothing, Spacing.APART, Spacing.APART + metrics.getAscent());
            return;
        }
        int left = 2 * Spacing.NEAR + metrics.getHeight() + metrics.stringWidth("0.00");
        int bottom = 2 * metrics.getHeight() + Spacing.APART;
        Rectangle2D area = new Rectangle2D.Double(
                left,
                Spacing.APART,
                Math.max(1, getWidth() - left - Spacing.APART),
                Math.max(1, getHeight() - bottom - Spacing.APART));
        LogAxis across = axis(points.stream().map(MapPoint::flexibility).toList());
        LogAxis up = axis(points.stream().map(MapPoint::cutting).toList());
        axes(g, area, across, up);
        List<Point2D> places = points.stream()
                .map(point -> (Point2D) new Point2D.Double(
                        area.getX() + across.share(point.flexibility().value()) * area.getWidth(),
                        area.getMaxY() - up.share(point.cutting().value()) * area.getHeight()))
                .toList();
        for (int i = 0; i < points.size(); i++) {
            bands(g, area, across, up, points.get(i), places.get(i));
        }
        labels(g, area, places);
        for (int i = 0; i < points.size(); i++) {
            marker(g, points.get(i), places.get(i));
        }
        g.setColor(Ink.unusual());
        g.drawString(remark, (float) area.getMaxX() - metrics.stringWidth(remark), (float) area.getY() - 3);
    }

    private void axes(Graphics2D g, Rectangle2D area, LogAxis across, LogAxis up) {
        FontMetrics metrics = g.getFontMetrics();
        for (double tick : across.ticks(area.getWidth(), metrics.stringWidth("0.00") + Spacing.NEAR)) {
            double x = area.getX() + across.share(tick) * area.getWidth();
            rule(g, new Line2D.Double(x, area.getY(), x, area.getMaxY()), tick == 1);
            String text = LogAxis.words(tick);
            g.drawString(
                    text,
                    (float) (x - metrics.stringWidth(text) / 2.0),
                    (float) area.getMaxY() + Spacing.TIGHT + metrics.getAscent());
        }
        for (double tick : up.ticks(area.getHeight(), metrics.getHeight())) {
            double y = area.getMaxY() - up.share(tick) * area.getHeight();
            rule(g, new Line2D.Double(area.getX(), y, area.getMaxX(), y), tick == 1);
            String text = LogAxis.words(tick);
            g.drawString(text, (float) area.getX() - Spacing.TIGHT - metrics.stringWidth(text), (float)
                    (y + metrics.getAscent() / 2.0 - 1));
        }
        g.setColor(Ink.text());
        centred(g, "Flexibility, ratio to datum", area.getCenterX(), getHeight() - Spacing.NEAR);
        AffineTransform upright = g.getTransform();
        g.rotate(-Math.PI / 2);
        centred(g, "Cutting index, ratio to datum", -area.getCenterY(), Spacing.TIGHT + metrics.getAscent());
        g.setTransform(upright);
    }

    private static void rule(Graphics2D g, Line2D line, boolean atDatum) {
        g.setStroke(new BasicStroke(atDatum ? 1.2f : 0.7f));
        g.setColor(atDatum ? Ink.mix(Ink.text(), Ink.paper(), 0.5) : Ink.grid());
        g.draw(line);
        g.setColor(Ink.quiet());
    }

    private static void centred(Graphics2D g, String text, double x, double y) {
        g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text) / 2.0), (float) y);
    }

    private void labels(Graphics2D g, Rectangle2D area, List<Point2D> places) {
        FontMetrics metrics = g.getFontMetrics();
        LabelPlaces room = new LabelPlaces(area, places, RING / 2 + 1);
        for (int i = 0; i < points.size(); i++) {
            String name = ShortText.cut(this, metrics, points.get(i).name(), area.getWidth() * WIDEST_LABEL);
            String role = points.get(i).role();
            double width = Math.max(metrics.stringWidth(name), metrics.stringWidth(role));
            int lines = role.isEmpty() ? 1 : 2;
            Rectangle2D label = room.place(places.get(i), width, lines * metrics.getHeight());
            leader(g, places.get(i), label);
            g.setColor(points.get(i).look().colour());
            float baseline = (float) label.getY() + metrics.getAscent();
            g.drawString(name, (float) label.getX(), baseline);
            g.drawString(role, (float) label.getX(), baseline + metrics.getHeight());
        }
    }

    /** A thin line from a point to its label where the label could not stand right beside it. */
    private static void leader(Graphics2D g, Point2D point, Rectangle2D label) {
        double x = Math.max(label.getX(), Math.min(label.getMaxX(), point.getX()));
        double y = Math.max(label.getY(), Math.min(label.getMaxY(), point.getY()));
        if (point.distance(x, y) > RING) {
            g.setColor(Ink.quiet());
            g.setStroke(new BasicStroke(0.7f));
            g.draw(new Line2D.Double(point.getX(), point.getY(), x, y));
        }
    }

    /** Thin lines over the bands of both ratios, through the marker. */
    private static void bands(
            Graphics2D g, Rectangle2D area, LogAxis across, LogAxis up, MapPoint point, Point2D place) {
        Band flexibility = band(point.flexibility());
        Band cutting = band(point.cutting());
        double left = area.getX() + held(across.share(flexibility.low())) * area.getWidth();
        double right = area.getX() + held(across.share(flexibility.high())) * area.getWidth();
        double bottom = area.getMaxY() - held(up.share(cutting.low())) * area.getHeight();
        double top = area.getMaxY() - held(up.share(cutting.high())) * area.getHeight();
        g.setColor(Ink.translucent(point.look().colour(), BAND_OPACITY));
        g.setStroke(new BasicStroke(1.4f));
        g.draw(new Line2D.Double(left, place.getY(), right, place.getY()));
        g.draw(new Line2D.Double(place.getX(), bottom, place.getX(), top));
    }

    private static double held(double share) {
        return Math.max(0, Math.min(1, share));
    }

    private static void marker(Graphics2D g, MapPoint point, Point2D place) {
        Shape marker = AffineTransform.getTranslateInstance(place.getX(), place.getY())
                .createTransformedShape(point.look().marker(MARKER));
        g.setStroke(new BasicStroke(1.6f));
        g.setColor(point.undominated() ? point.look().colour() : Ink.paper());
        g.fill(marker);
        g.setColor(point.look().colour());
        g.draw(marker);
        if (point.undominated()) {
            g.setStroke(new BasicStroke(1.2f));
            g.draw(new Ellipse2D.Double(place.getX() - RING / 2, place.getY() - RING / 2, RING, RING));
        }
    }
}
