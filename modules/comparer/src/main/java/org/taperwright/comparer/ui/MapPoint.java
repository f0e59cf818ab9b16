package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Dominance;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.RatioEllipse;
import org.taperwright.mechanics.comparison.TradeOff;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.workbench.ui.SeriesLook;

/**
 * A design's place on the map.
 *
 * @param id the design's identifier
 * @param name the design's name
 * @param look its look in every figure
 * @param across ratio to the datum's on the axis across, with its band
 * @param up ratio to the datum's on the upright axis, with its band
 * @param size ratio to the datum's that its marker's size goes with
 * @param datum whether it is the datum
 * @param ellipse where both ratios lie together; absent where bars are wanted or while it is being found
 * @param place whether another dominates it, and how sure that is; absent while that is being found, or where neither more
 *     nor less of a metric is better
 */
record MapPoint(
        ThingId id,
        String name,
        SeriesLook look,
        Reading across,
        Reading up,
        OptionalDouble size,
        boolean datum,
        Optional<RatioEllipse> ellipse,
        Optional<TradeOff.Place> place) {
    /** The points of a comparison; a design without both ratios has none. */
    static List<MapPoint> of(
            Compared compared,
            List<SeriesLook> looks,
            MapAxes axes,
            Optional<TradeOff> tradeOff,
            List<Optional<RatioEllipse>> ellipses) {
        Optional<Integer> datum = compared.datumMember();
        if (datum.isEmpty() || compared.comparison().isEmpty()) {
            return List.of();
        }
        Comparison comparison = compared.comparison().get();
        List<MapPoint> points = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            Optional<Integer> column = compared.column(i);
            if (column.isPresent()) {
                Optional<Reading> across = ratio(comparison, axes.across(), column.get());
                Optional<Reading> up = ratio(comparison, axes.up(), column.get());
                if (across.isPresent() && up.isPresent()) {
                    points.add(new MapPoint(
                            compared.members().get(i).id(),
                            compared.members().get(i).name(),
                            looks.get(i),
                            across.get(),
                            up.get(),
                            size(comparison, axes, column.get()),
                            datum.get() == i,
                            column.get() < ellipses.size() ? ellipses.get(column.get()) : Optional.empty(),
                            tradeOff.filter(known -> !known.places().isEmpty())
                                    .map(known -> known.places().get(column.get()))));
                }
            }
        }
        return points;
    }

    private static OptionalDouble size(Comparison comparison, MapAxes axes, int column) {
        return axes.size()
                .flatMap(metric -> ratio(comparison, metric, column))
                .map(reading -> OptionalDouble.of(reading.value()))
                .orElse(OptionalDouble.empty());
    }

    /** Whether no other dominates it at the middle of all uncertain constants. */
    boolean undominated() {
        return place.map(TradeOff.Place::undominated).orElse(false);
    }

    /** What it is besides a design: datum, undominated and how surely; empty for neither. */
    String role() {
        String sure = place.filter(known -> known.dominance() != Dominance.DOMINATED)
                .map(known -> known.dominance().words())
                .orElse("");
        if (datum) {
            return sure.isEmpty() ? "datum" : "datum, " + sure;
        }
        return sure;
    }

    /** Name and role in one line. */
    String words() {
        return role().isEmpty() ? name : name + " (" + role() + ")";
    }

    private static Optional<Reading> ratio(Comparison comparison, Metric metric, int column) {
        return comparison.rows().stream()
                .filter(row -> row.metric().equals(metric))
                .findFirst()
                .map(row -> row.cells().get(column))
                .filter(cell -> cell.ratio().isPresent() && cell.ratio().getAsDouble() > 0)
                .map(cell -> new Reading(cell.ratio().getAsDouble(), cell.ratioBand()));
    }
}
