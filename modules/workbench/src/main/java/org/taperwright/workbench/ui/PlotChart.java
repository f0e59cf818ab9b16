package org.taperwright.workbench.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickUnits;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Turns a {@link Plot} into a chart dressed in the theme. */
final class PlotChart {
    private static final float THICK = 1.8f;
    private static final float THIN = 1.1f;
    private static final double MARKER = 7;
    private static final double BAND_OPACITY = 0.2;

    private PlotChart() {}

    static JFreeChart of(Plot plot) {
        XYPlot xy = new XYPlot();
        xy.setDomainAxis(axis(plot, true));
        xy.setRangeAxis(axis(plot, false));
        xy.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        bands(plot, xy);
        curves(plot, xy);
        plot.rules().forEach(rule -> rule(rule, xy, PlotRange.of(plot, false)));
        dress(xy);
        JFreeChart chart = new JFreeChart(null, null, xy, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(new RectangleInsets(Spacing.TIGHT, 0, 0, 0));
        return chart;
    }

    /** Room around the axes: above for the upright axis's title, right for the names at the curves' ends. */
    static RectangleInsets insets(double titleHeight, double namesWidth) {
        double right = namesWidth == 0 ? Spacing.APART : namesWidth + Spacing.APART;
        return new RectangleInsets(titleHeight + Spacing.TIGHT, Spacing.TIGHT, Spacing.TIGHT, right);
    }

    private static NumberAxis axis(Plot plot, boolean horizontal) {
        // The upright axis has its title above it, written across, by PlotLabels: readable, and never too long.
        NumberAxis axis = new NumberAxis(horizontal ? plot.x().heading() : null);
        PlotRange range = PlotRange.of(plot, horizontal);
        axis.setRange(range.low(), range.high());
        axis.setStandardTickUnits(steps());
        axis.setTickLabelFont(Ink.smallFont());
        axis.setTickLabelPaint(Ink.quiet());
        axis.setLabelFont(Ink.smallFont());
        axis.setLabelPaint(Ink.text());
        axis.setAxisLinePaint(Ink.mix(Ink.text(), Ink.paper(), 0.5));
        axis.setTickMarksVisible(false);
        // Room above and below upright numbers keeps them from crowding.
        int room = horizontal ? 2 : 5;
        axis.setTickLabelInsets(new RectangleInsets(room, Spacing.TIGHT, room, Spacing.TIGHT));
        return axis;
    }

    /** Steps of 1, 2 and 5 times powers of ten, each with just the decimals that it needs. */
    private static TickUnits steps() {
        TickUnits units = new TickUnits();
        for (int power = -6; power <= 6; power++) {
            DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
            format.setMinimumFractionDigits(Math.max(0, -power));
            format.setMaximumFractionDigits(Math.max(0, -power));
            for (int step : new int[] {1, 2, 5}) {
                units.add(new NumberTickUnit(step * Math.pow(10, power), format));
            }
        }
        return units;
    }

    private static void dress(XYPlot xy) {
        xy.setBackgroundPaint(null);
        xy.setOutlineVisible(false);
        xy.setAxisOffset(RectangleInsets.ZERO_INSETS);
        BasicStroke hair = new BasicStroke(0.7f);
        xy.setDomainGridlineStroke(hair);
        xy.setRangeGridlineStroke(hair);
        xy.setDomainGridlinePaint(Ink.grid());
        xy.setRangeGridlinePaint(Ink.grid());
    }

    private static void bands(Plot plot, XYPlot xy) {
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        DeviationRenderer renderer = new DeviationRenderer(false, false);
        renderer.setAlpha((float) BAND_OPACITY);
        for (Plot.Band band : plot.bands()) {
            YIntervalSeries series = new YIntervalSeries(data.getSeriesCount(), false, true);
            for (int i = 0; i < band.lower().size(); i++) {
                double low = band.lower().get(i).y();
                double high = band.upper().get(i).y();
                series.add(band.lower().get(i).x(), (low + high) / 2, low, high);
            }
            renderer.setSeriesFillPaint(data.getSeriesCount(), band.look().colour());
            data.addSeries(series);
        }
        xy.setDataset(0, data);
        xy.setRenderer(0, renderer);
    }

    private static void curves(Plot plot, XYPlot xy) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
        renderer.setDrawSeriesLineAsPath(true);
        for (Plot.Curve curve : plot.curves()) {
            int index = data.getSeriesCount();
            XYSeries series = new XYSeries(index, false, true);
            curve.spots().forEach(spot -> series.add(spot.x(), spot.y(), false));
            data.addSeries(series);
            boolean spots = curve.style() == Plot.Style.SPOTS || curve.style() == Plot.Style.LINE_AND_SPOTS;
            renderer.setSeriesPaint(index, curve.look().colour());
            renderer.setSeriesStroke(index, curve.look().stroke(curve.style() == Plot.Style.THIN_LINE ? THIN : THICK));
            renderer.setSeriesLinesVisible(index, curve.style() != Plot.Style.SPOTS);
            renderer.setSeriesShapesVisible(index, spots);
            renderer.setSeriesShape(index, curve.look().marker(MARKER));
        }
        xy.setDataset(1, data);
        xy.setRenderer(1, renderer);
    }

    private static void rule(Plot.Rule rule, XYPlot xy, PlotRange upright) {
        Color colour = Ink.quiet();
        ValueMarker marker = new ValueMarker(rule.at(), colour, new BasicStroke(1f));
        marker.setLabel(rule.label());
        marker.setLabelFont(Ink.smallFont());
        marker.setLabelPaint(colour);
        marker.setLabelBackgroundColor(Ink.translucent(Ink.paper(), 0));
        marker.setLabelOffset(new RectangleInsets(2, Spacing.TIGHT, 2, Spacing.TIGHT));
        if (rule.run() == Plot.Run.ACROSS) {
            // Words stand above the line, but below it where there is no room above.
            boolean high = rule.at() > upright.low() + 0.75 * upright.length();
            marker.setLabelAnchor(high ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.TOP_LEFT);
            marker.setLabelTextAnchor(high ? TextAnchor.TOP_LEFT : TextAnchor.BOTTOM_LEFT);
            xy.addRangeMarker(marker, Layer.BACKGROUND);
        } else {
            marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
            marker.setLabelTextAnchor(TextAnchor.TOP_LEFT);
            xy.addDomainMarker(marker, Layer.BACKGROUND);
        }
    }
}
