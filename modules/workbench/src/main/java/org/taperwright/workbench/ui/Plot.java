package org.taperwright.workbench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a plot shows, as data: two axes, curves or spots, bands, and rules such as limits.
 *
 * @param x horizontal axis
 * @param y vertical axis
 * @param curves drawn in this order
 * @param bands translucent, behind the curves
 * @param rules straight lines across, each with a label
 */
public record Plot(Axis x, Axis y, List<Curve> curves, List<Band> bands, List<Rule> rules) {
    public Plot {
        curves = List.copyOf(curves);
        bands = List.copyOf(bands);
        rules = List.copyOf(rules);
    }

    /** A plot of curves alone. */
    public static Plot of(Axis x, Axis y, List<Curve> curves) {
        return new Plot(x, y, curves, List.of(), List.of());
    }

    /** A point in the axes' units. */
    public record Spot(double x, double y) {}

    /**
     * An axis.
     *
     * @param title what it shows
     * @param unit its unit; empty for a plain number
     * @param from where it begins; when absent, 0 or a little before the least value shown, whichever is less
     * @param to where it ends; when absent, a little beyond the greatest value shown
     */
    public record Axis(String title, String unit, OptionalDouble from, OptionalDouble to) {
        /** An axis that fits what is shown. */
        public static Axis of(String title, String unit) {
            return new Axis(title, unit, OptionalDouble.empty(), OptionalDouble.empty());
        }

        /** An axis with fixed ends. */
        public static Axis of(String title, String unit, double from, double to) {
            return new Axis(title, unit, OptionalDouble.of(from), OptionalDouble.of(to));
        }

        /** Title with the unit. */
        public String heading() {
            return unit.isEmpty() ? title : title + " (" + unit + ")";
        }
    }

    /** How a curve is drawn. */
    public enum Style {
        LINE,
        THIN_LINE,
        SPOTS,
        LINE_AND_SPOTS
    }

    /** A curve, or separate spots, with the name that stands at its end. */
    public record Curve(String name, SeriesLook look, Style style, List<Spot> spots) {
        public Curve {
            spots = List.copyOf(spots);
        }
    }

    /** A band between a lower and an upper bound given at the same x, such as 5 to 95 %. */
    public record Band(String name, SeriesLook look, List<Spot> lower, List<Spot> upper) {
        public Band {
            lower = List.copyOf(lower);
            upper = List.copyOf(upper);
            if (lower.size() != upper.size()) {
                throw new IllegalArgumentException("a band needs as many lower as upper points");
            }
        }
    }

    /** Which way a rule runs. */
    public enum Run {
        ACROSS,
        UPRIGHT
    }

    /**
     * A straight line over the whole plot.
     *
     * @param label what it marks; may be empty
     * @param run across (at a y) or upright (at an x)
     * @param at where
     */
    public record Rule(String label, Run run, double at) {}

    /** The numbers shown, for the clipboard and CSV: one line a point, the curves first and then the edges of the bands. */
    public DataTable numbers() {
        List<List<String>> rows = new ArrayList<>();
        curves.forEach(curve -> lines(curve.name(), curve.spots(), rows));
        bands.forEach(band -> {
            lines(band.name() + ", low", band.lower(), rows);
            lines(band.name() + ", high", band.upper(), rows);
        });
        return new DataTable(List.of("Curve", x.heading(), y.heading()), rows);
    }

    private static void lines(String name, List<Spot> spots, List<List<String>> rows) {
        spots.forEach(spot -> rows.add(List.of(name, Double.toString(spot.x()), Double.toString(spot.y()))));
    }
}
