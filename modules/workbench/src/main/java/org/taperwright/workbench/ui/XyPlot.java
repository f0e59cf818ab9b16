package org.taperwright.workbench.ui;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.ToolTipManager;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.quantity.Shown;

/**
 * Shows a {@link Plot} in the theme's colours, drawn as vectors at whatever scale the screen or the file has. Names
 * stand at the curves' ends; hovering reads values; the popup menu copies and saves.
 */
public final class XyPlot extends Drawing {
    private final List<Consumer<Graphics2D>> overlays = new ArrayList<>();
    private transient Plot plot = Plot.of(Plot.Axis.of("", ""), Plot.Axis.of("", ""), List.of());
    private transient JFreeChart chart;
    private transient Rectangle2D dataArea = new Rectangle2D.Double();
    private String remark = "";

    /**
     * @param name what tests and other code find it by
     * @param title what it shows, for assistive technology and file names
     */
    public XyPlot(String name, String title) {
        super(name, title);
        setPreferredSize(new Dimension(320, 200));
        setMinimumSize(new Dimension(160, 120));
        chart = PlotChart.of(plot);
        ToolTipManager.sharedInstance().registerComponent(this);
        CopyMenu.on(this, title, () -> plot.numbers());
    }

    /** Shows a plot. */
    public void setPlot(Plot shown) {
        plot = shown;
        chart = PlotChart.of(shown);
        repaint();
    }

    /** What it shows. */
    public Plot plot() {
        return plot;
    }

    /** A few words above the axes, such as "outdated"; empty for none. */
    public void setRemark(String words) {
        remark = words;
        repaint();
    }

    /** Draws on top, in the component's pixels. */
    public void addOverlay(Consumer<Graphics2D> overlay) {
        overlays.add(overlay);
    }

    /** Where a point of the axes stands, in the component's pixels. */
    public Point2D toPixels(double x, double y) {
        Rectangle2D area = area();
        double across =
                (x - PlotRange.of(plot, true).low()) / PlotRange.of(plot, true).length();
        double up = (y - PlotRange.of(plot, false).low())
                / PlotRange.of(plot, false).length();
        return new Point2D.Double(area.getX() + across * area.getWidth(), area.getMaxY() - up * area.getHeight());
    }

    /** What stands at a pixel, in the axes' units. */
    public Point2D toAxes(Point2D pixel) {
        Rectangle2D area = area();
        PlotRange x = PlotRange.of(plot, true);
        PlotRange y = PlotRange.of(plot, false);
        double across = (pixel.getX() - area.getX()) / area.getWidth();
        double up = (area.getMaxY() - pixel.getY()) / area.getHeight();
        return new Point2D.Double(x.low() + across * x.length(), y.low() + up * y.length());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (plot != null) {
            chart = PlotChart.of(plot);
            repaint();
        }
    }

    @Override
    protected void draw(Graphics2D g) {
        drawPlot(g);
        overlays.forEach(overlay -> overlay.accept(g));
    }

    private void drawPlot(Graphics2D g) {
        PlotLabels labels = new PlotLabels(plot, g.getFontMetrics(Ink.smallFont()));
        chart.getXYPlot().setInsets(PlotChart.insets(labels.titleHeight(), labels.width()));
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()), info);
        dataArea = info.getPlotInfo().getDataArea();
        labels.draw(g, dataArea, this::toPixels);
        if (!remark.isEmpty()) {
            g.setFont(Ink.smallFont());
            g.setColor(Ink.unusual());
            int width = g.getFontMetrics().stringWidth(remark);
            g.drawString(
                    remark,
                    getWidth() - width - Spacing.TIGHT,
                    g.getFontMetrics().getAscent() + Spacing.TIGHT);
        }
    }

    /** The area between the axes, found by drawing once where it never was drawn at this size. */
    private Rectangle2D area() {
        if (dataArea.getWidth() <= 0) {
            java.awt.image.BufferedImage scratch =
                    new java.awt.image.BufferedImage(1, 1, java.awt.image.BufferedImage.TYPE_INT_RGB);
            Graphics2D g = scratch.createGraphics();
            g.setClip(0, 0, 1, 1);
            dataArea = new Rectangle2D.Double(0, 0, 1, 1);
            drawPlot(g);
            g.dispose();
        }
        return dataArea;
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        if (!dataArea.contains(event.getPoint())) {
            return null;
        }
        return reading(toAxes(event.getPoint()).getX()).orElse(null);
    }

    /** The curves' values and the bands' edges at an x, one line each. */
    Optional<String> reading(double x) {
        StringBuilder text = new StringBuilder();
        for (Plot.Curve curve : plot.curves()) {
            PlotRange.at(curve, x)
                    .ifPresent(y -> text.append("<br>")
                            .append(curve.name().isEmpty() ? plot.y().title() : curve.name())
                            .append(": ")
                            .append(Shown.number(y))
                            .append(' ')
                            .append(plot.y().unit()));
        }
        for (Plot.Band band : plot.bands()) {
            OptionalDouble low = PlotRange.at(band.lower(), x);
            OptionalDouble high = PlotRange.at(band.upper(), x);
            if (low.isPresent() && high.isPresent()) {
                text.append("<br>")
                        .append(band.name())
                        .append(": ")
                        .append(Shown.number(low.getAsDouble()))
                        .append(" to ")
                        .append(Shown.number(high.getAsDouble()))
                        .append(' ')
                        .append(plot.y().unit());
            }
        }
        if (text.length() == 0) {
            return Optional.empty();
        }
        return Optional.of("<html>" + plot.x().title() + ": " + Shown.number(x) + " "
                + plot.x().unit() + text + "</html>");
    }
}
