package org.taperwright.comparer.ui;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.sweep.SweepPoint;
import org.taperwright.mechanics.comparison.sweep.Swing;
import org.taperwright.mechanics.comparison.sweep.Tornado;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.DataTable;
import org.taperwright.workbench.ui.Drawing;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** A bar for each parameter from the least to the greatest value it gives the metric, the widest on top. */
final class TornadoDrawing extends Drawing {
    private static final double BAR = 12;

    private transient Optional<Tornado> tornado = Optional.empty();
    private transient Metric metric = MapAxes.USUAL.across();
    private String remark = "";

    TornadoDrawing() {
        super("comparison.tornado.drawing", "Which parameter moves the metric most");
        setPreferredSize(new Dimension(360, 300));
        CopyMenu.on(this, "What moves a metric", this::numbers);
    }

    void show(Optional<Tornado> newTornado, Metric newMetric) {
        tornado = newTornado;
        metric = newMetric;
        getAccessibleContext()
                .setAccessibleDescription(tornado.map(shown -> shown.by(metric).stream()
                                .map(swing -> swing.parameter().label() + ": " + words(shown, swing))
                                .collect(Collectors.joining("; ")))
                        .orElse(""));
        repaint();
    }

    void setRemark(String words) {
        remark = words;
        repaint();
    }

    private String words(Tornado shown, Swing swing) {
        return swing.reach(metric, shown.here()).map(Shown::band).orElse("");
    }

    private DataTable numbers() {
        return new DataTable(
                List.of("parameter", "setting", metric.label()),
                tornado.stream()
                        .flatMap(shown -> shown.by(metric).stream())
                        .flatMap(swing -> swing.points().stream()
                                .map(point -> List.of(
                                        swing.parameter().label(),
                                        point.setting().words(),
                                        point.value(metric).isPresent()
                                                ? Double.toString(
                                                        point.value(metric).getAsDouble())
                                                : "")))
                        .toList());
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setFont(Ink.smallFont());
        FontMetrics metrics = g.getFontMetrics();
        int top = Spacing.NEAR + metrics.getAscent();
        g.setColor(Ink.unusual());
        g.drawString(remark, getWidth() - metrics.stringWidth(remark) - Spacing.NEAR, top);
        if (tornado.isEmpty()) {
            g.setColor(Ink.quiet());
            g.drawString(
                    "Press “Move each parameter”: amounts by a tenth, choices to every option.", Spacing.NEAR, top);
            return;
        }
        Tornado shown = tornado.get();
        List<Swing> swings = shown.by(metric);
        double here = shown.here().value(metric).orElse(0);
        String unit = metric.unit().isEmpty() ? "" : " " + metric.unit();
        g.setColor(Ink.text());
        g.drawString(metric.label() + ", as it is: " + Shown.number(here) + unit, Spacing.NEAR, top);
        double least = swings.stream()
                .flatMap(swing -> swing.reach(metric, shown.here()).stream())
                .mapToDouble(Band::low)
                .min()
                .orElse(here);
        double most = swings.stream()
                .flatMap(swing -> swing.reach(metric, shown.here()).stream())
                .mapToDouble(Band::high)
                .max()
                .orElse(here);
        double left = Spacing.NEAR;
        double width = Math.max(1, getWidth() - 2.0 * Spacing.NEAR);
        double scale = most > least ? width / (most - least) : 0;
        double y = top + Spacing.NEAR;
        double pitch = metrics.getHeight() + BAR + Spacing.NEAR;
        for (Swing swing : swings) {
            if (y + pitch > getHeight()) {
                g.setColor(Ink.quiet());
                g.drawString("… smaller ones do not fit; copy the numbers for all", (float) left, (float)
                        (y + metrics.getAscent()));
                return;
            }
            Band reach = swing.reach(metric, shown.here()).orElseThrow();
            g.setColor(Ink.text());
            g.drawString(label(swing), (float) left, (float) (y + metrics.getAscent()));
            double bar = y + metrics.getHeight();
            g.setColor(Ink.translucent(new SeriesLook(0).colour(), 0.75));
            g.fill(new Rectangle2D.Double(
                    left + (reach.low() - least) * scale, bar, (reach.high() - reach.low()) * scale, BAR));
            g.setColor(Ink.text());
            g.setStroke(new BasicStroke(1.2f));
            double middle = left + (here - least) * scale;
            g.draw(new Line2D.Double(middle, bar - 2, middle, bar + BAR + 2));
            y += pitch;
        }
    }

    /** The parameter, with the settings that give the least and the greatest value. */
    private String label(Swing swing) {
        List<SweepPoint> points = swing.points().stream()
                .filter(point -> point.value(metric).isPresent())
                .sorted((a, b) -> Double.compare(
                        a.value(metric).getAsDouble(), b.value(metric).getAsDouble()))
                .toList();
        String settings = points.stream()
                .map(point -> point.setting().words() + " → "
                        + Shown.number(point.value(metric).getAsDouble()))
                .collect(Collectors.joining(", "));
        return ShortText.cut(
                this,
                getFontMetrics(Ink.smallFont()),
                swing.parameter().label() + ": " + settings,
                getWidth() - 2.0 * Spacing.NEAR);
    }
}
