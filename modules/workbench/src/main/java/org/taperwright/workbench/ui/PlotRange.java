package org.taperwright.workbench.ui;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The stretch of an axis that a plot shows. */
record PlotRange(double low, double high) {
    private static final double MARGIN = 0.06;

    double length() {
        return high - low;
    }

    static PlotRange of(Plot plot, boolean horizontal) {
        Plot.Axis axis = horizontal ? plot.x() : plot.y();
        DoubleSummaryStatistics seen =
                values(plot, horizontal).filter(Double::isFinite).summaryStatistics();
        double least = seen.getCount() == 0 ? 0 : seen.getMin();
        double most = seen.getCount() == 0 ? 1 : seen.getMax();
        double low = axis.from().orElse(least >= 0 ? 0 : least - MARGIN * (most - least));
        double margin = horizontal ? 0 : MARGIN * (most - low);
        double high = axis.to().orElse(most <= 0 ? 0 : most + margin);
        return high > low ? new PlotRange(low, high) : new PlotRange(low, low + 1);
    }

    /** The value of a curve at an x between its points, by straight lines. */
    static OptionalDouble at(Plot.Curve curve, double x) {
        return curve.style() == Plot.Style.SPOTS ? OptionalDouble.empty() : at(curve.spots(), x);
    }

    /** The value at an x between points that run to the right, by straight lines. */
    static OptionalDouble at(List<Plot.Spot> spots, double x) {
        for (int i = 1; i < spots.size(); i++) {
            Plot.Spot a = spots.get(i - 1);
            Plot.Spot b = spots.get(i);
            if (a.x() <= x && x <= b.x() && a.x() < b.x()) {
                return OptionalDouble.of(a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
            }
        }
        return OptionalDouble.empty();
    }

    private static DoubleStream values(Plot plot, boolean horizontal) {
        Stream<Plot.Spot> curves = plot.curves().stream().flatMap(curve -> curve.spots().stream());
        Stream<Plot.Spot> bands =
                plot.bands().stream().flatMap(band -> Stream.concat(band.lower().stream(), band.upper().stream()));
        DoubleStream rules = plot.rules().stream()
                .filter(rule -> (rule.run() == Plot.Run.UPRIGHT) == horizontal)
                .mapToDouble(Plot.Rule::at);
        return DoubleStream.concat(
                Stream.concat(curves, bands).mapToDouble(spot -> horizontal ? spot.x() : spot.y()), rules);
    }
}
