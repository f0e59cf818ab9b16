package org.taperwright.comparer.ui;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.DataTable;
import org.taperwright.workbench.ui.Drawing;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/**
 * The map of two metrics against each other, both as ratios to the datum on logarithmic axes, with lines over the 5 to 95 %
 * bands of both or the ellipse that holds 90 % of both together, catalogue entries pale behind. A design that surely no other dominates has a filled marker within a ring, one
 * that possibly none does a hollow marker within a dashed ring, both with the words beside; the others are hollow. Drag to move,
 * wheel or + and - to magnify, 0 to see everything; click or Enter opens a design.
 */
final class TradeOffMap extends Drawing {
    /** Bands that reach farther than this are cut off by the axes. */
    private static final double FARTHEST_BAND = 4;

    private static final double REACH = 10;
    private static final double CLOUD_REACH = 4;

    private final transient CloudImage cloudImage = new CloudImage();
    private transient List<MapPoint> points = List.of();
    private transient MapAxes axes = MapAxes.USUAL;
    private transient MapView view = MapView.WHOLE;
    private transient List<Cloud.Entry> cloud = List.of();
    private transient List<Point2D> cloudRatios = List.of();
    private int cloudLeft;
    private transient List<Point2D> path = List.of();
    private transient SeriesLook pathLook = new SeriesLook(0);
    private transient Consumer<ThingId> open = id -> {};
    private int chosen = -1;
    private String nothing = "";
    private String remark = "";

    TradeOffMap() {
        super("comparison.map", "Map of flexibility against cutting, ratios to the datum");
        setPreferredSize(new Dimension(360, 320));
        CopyMenu.on(this, "Map of the comparison", this::numbers);
        setToolTipText("");
        new MapGestures(this);
    }

    /** Receives the thing that a person opens. */
    void onOpen(Consumer<ThingId> listener) {
        open = listener;
    }

    /** Shows points on axes. */
    void show(List<MapPoint> newPoints, MapAxes newAxes) {
        if (!axes.across().equals(newAxes.across()) || !axes.up().equals(newAxes.up())) {
            view = MapView.WHOLE;
        }
        points = List.copyOf(newPoints);
        axes = newAxes;
        nothing = "No ratios: the datum cannot be computed, or has none of these.";
        getAccessibleContext()
                .setAccessibleName("Map of " + axes.across().label() + " against "
                        + axes.up().label() + ", ratios to the datum");
        getAccessibleContext()
                .setAccessibleDescription(points.stream().map(this::reading).collect(Collectors.joining("; ")));
        repaint();
    }

    /** Shows catalogue entries behind, by their ratios to the datum. */
    void showCloud(Cloud newCloud, double acrossDatum, double upDatum) {
        List<Cloud.Entry> entries = new ArrayList<>();
        List<Point2D> ratios = new ArrayList<>();
        for (Cloud.Entry entry : newCloud.entries()) {
            double across = entry.ratio(axes.across(), acrossDatum);
            double up = entry.ratio(axes.up(), upDatum);
            if (across > 0 && up > 0) {
                entries.add(entry);
                ratios.add(new Point2D.Double(across, up));
            }
        }
        cloud = List.copyOf(entries);
        cloudRatios = List.copyOf(ratios);
        cloudLeft = newCloud.left();
        repaint();
    }

    /** Shows where a design has been while a parameter was moved; nothing for an empty path. */
    void showPath(List<Point2D> ratios, SeriesLook look) {
        path = List.copyOf(ratios);
        pathLook = look;
        repaint();
    }

    /** What is traced. */
    List<Point2D> path() {
        return path;
    }

    /** A word in the corner, such as "outdated". */
    void setRemark(String words) {
        remark = words;
        repaint();
    }

    MapView view() {
        return view;
    }

    void setView(MapView newView) {
        view = newView;
        repaint();
    }

    /** Chooses the next or the previous design, for opening by the keyboard. */
    void choose(int step) {
        if (!points.isEmpty()) {
            chosen = Math.floorMod(chosen < 0 && step < 0 ? 0 : chosen + step, points.size());
            repaint();
        }
    }

    /** Opens the chosen design. */
    void openChosen() {
        if (chosen >= 0 && chosen < points.size()) {
            open.accept(points.get(chosen).id());
        }
    }

    /** Opens what stands at a place. */
    void openAt(Point place) {
        thingAt(place).ifPresent(open);
    }

    private DataTable numbers() {
        String across = axes.across().label();
        String up = axes.up().label();
        return new DataTable(
                List.of(
                        "design",
                        across + ", ratio to datum",
                        across + ", low",
                        across + ", high",
                        up + ", ratio to datum",
                        up + ", low",
                        up + ", high",
                        "trade-off"),
                points.stream()
                        .map(point -> List.of(
                                point.name(),
                                Double.toString(point.across().value()),
                                Double.toString(MapPainting.band(point.across()).low()),
                                Double.toString(MapPainting.band(point.across()).high()),
                                Double.toString(point.up().value()),
                                Double.toString(MapPainting.band(point.up()).low()),
                                Double.toString(MapPainting.band(point.up()).high()),
                                point.place()
                                        .map(place -> place.dominance().words())
                                        .orElse("")))
                        .toList());
    }

    private String reading(MapPoint point) {
        return point.words() + ": " + axes.across().label() + " " + words(point.across()) + ", "
                + axes.up().label() + " " + words(point.up());
    }

    private static String words(Reading ratio) {
        return Shown.number(ratio.value())
                + ratio.band().map(band -> " (" + Shown.band(band) + ")").orElse("");
    }

    /** The axis that holds ratios and, as far as it may, their bands. */
    private static LogAxis axis(List<Reading> ratios) {
        return LogAxis.of(ratios.stream().flatMapToDouble(ratio -> {
            double farthest = ratio.value() * FARTHEST_BAND;
            double nearest = ratio.value() / FARTHEST_BAND;
            return DoubleStream.of(
                    ratio.value(),
                    Math.max(nearest, MapPainting.band(ratio).low()),
                    Math.min(farthest, MapPainting.band(ratio).high()));
        }));
    }

    /** The area between the axes. */
    Rectangle2D area() {
        FontMetrics metrics = getFontMetrics(Ink.smallFont());
        int left = 2 * Spacing.NEAR + metrics.getHeight() + metrics.stringWidth("0.00");
        int bottom = 2 * metrics.getHeight() + Spacing.APART;
        return new Rectangle2D.Double(
                left,
                Spacing.APART,
                Math.max(1, getWidth() - left - Spacing.APART),
                Math.max(1, getHeight() - bottom - Spacing.APART));
    }

    private MapFrame frame() {
        LogAxis across = axis(points.stream().map(MapPoint::across).toList());
        LogAxis up = axis(points.stream().map(MapPoint::up).toList());
        return new MapFrame(area(), view.seen(across, true), view.seen(up, false));
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
        MapFrame frame = frame();
        cloudImage.draw(g, cloudRatios, frame);
        new MapPainting(g, frame).axes(axes, getHeight());
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(frame.area());
        MapPainting painting = new MapPainting(inside, frame);
        points.forEach(painting::bands);
        if (path.size() > 1) {
            painting.path(path, pathLook);
        }
        painting.labels(this, points);
        for (int i = 0; i < points.size(); i++) {
            painting.marker(points.get(i), i == chosen && isFocusOwner());
        }
        inside.dispose();
        g.setColor(Ink.unusual());
        g.drawString(
                remark,
                (float) frame.area().getMaxX() - metrics.stringWidth(remark),
                (float) frame.area().getY() - 3);
        if (!cloud.isEmpty() || cloudLeft > 0) {
            g.setColor(Ink.quiet());
            g.drawString(
                    cloudWords(),
                    (float) frame.area().getX(),
                    (float) frame.area().getY() - 3);
        }
    }

    /** The designs shown. */
    List<MapPoint> points() {
        return points;
    }

    /** Where a catalogue entry stands: its ratios across and up; nothing for one that does not. */
    Optional<Point2D> cloudPlace(ThingId id) {
        for (int i = 0; i < cloud.size(); i++) {
            if (cloud.get(i).id().equals(id)) {
                return Optional.of(cloudRatios.get(i));
            }
        }
        return Optional.empty();
    }

    /** How many catalogue entries stand behind, and how many are still being computed. */
    String cloudWords() {
        String entries = cloud.size() == 1 ? " catalogue entry" : " catalogue entries";
        return "pale: " + cloud.size() + entries + (cloudLeft > 0 ? ", " + cloudLeft + " to come" : "");
    }

    private Optional<MapPoint> pointAt(Point place) {
        MapFrame frame = frame();
        return points.stream()
                .filter(point ->
                        frame.at(point.across().value(), point.up().value()).distance(place) <= REACH)
                .findFirst();
    }

    private Optional<Cloud.Entry> entryAt(Point place) {
        if (!area().contains(place)) {
            return Optional.empty();
        }
        MapFrame frame = frame();
        for (int i = 0; i < cloud.size(); i++) {
            Point2D ratio = cloudRatios.get(i);
            if (frame.at(ratio.getX(), ratio.getY()).distance(place) <= CLOUD_REACH) {
                return Optional.of(cloud.get(i));
            }
        }
        return Optional.empty();
    }

    /** What stands at a place. */
    Optional<ThingId> thingAt(Point place) {
        if (points.isEmpty()) {
            return Optional.empty();
        }
        return pointAt(place).map(MapPoint::id).or(() -> entryAt(place).map(Cloud.Entry::id));
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        if (points.isEmpty()) {
            return null;
        }
        return pointAt(event.getPoint())
                .map(this::reading)
                .or(() -> entryAt(event.getPoint()).map(entry -> entry.name() + " (catalogue)"))
                .orElse(
                        "Lines: 5 to 95 % of each ratio; ellipses: 90 % of both together. Filled and ringed: surely undominated; dashed ring: possibly. "
                                + "Drag to move, wheel to magnify.");
    }
}
