package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.workbench.ui.SeriesLook;

/**
 * A design's place on the map.
 *
 * @param name the design's name
 * @param look its look in every figure
 * @param flexibility ratio of flexibility to the datum's, with its band
 * @param cutting ratio of cutting to the datum's, with its band
 * @param datum whether it is the datum
 * @param undominated whether no other is at least as good in both and better in one
 */
record MapPoint(
        String name, SeriesLook look, Reading flexibility, Reading cutting, boolean datum, boolean undominated) {
    /** The points of a comparison; a design without both ratios has none. */
    static List<MapPoint> of(Compared compared, List<SeriesLook> looks) {
        Optional<Integer> datum = compared.datumMember();
        if (datum.isEmpty() || compared.comparison().isEmpty()) {
            return List.of();
        }
        Comparison comparison = compared.comparison().get();
        List<MapPoint> points = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            Optional<Integer> column = compared.column(i);
            if (column.isPresent()) {
                Optional<Reading> flexibility = ratio(comparison, Metrics.FLEXIBILITY, column.get());
                Optional<Reading> cutting = ratio(comparison, Metrics.CUTTING, column.get());
                if (flexibility.isPresent() && cutting.isPresent()) {
                    points.add(new MapPoint(
                            compared.members().get(i).name(),
                            looks.get(i),
                            flexibility.get(),
                            cutting.get(),
                            datum.get() == i,
                            comparison.tradeOff().places().get(column.get()).undominated()));
                }
            }
        }
        return points;
    }

    /** What it is besides a design: datum, undominated; empty for neither. */
    String role() {
        if (datum) {
            return undominated ? "datum, undominated" : "datum";
        }
        return undominated ? "undominated" : "";
    }

    /** Name and role in one line. */
    String words() {
        return role().isEmpty() ? name : name + " (" + role() + ")";
    }

    private static Optional<Reading> ratio(Comparison comparison, String metric, int column) {
        return comparison.rows().stream()
                .filter(row -> row.metric().id().equals(metric))
                .findFirst()
                .map(row -> row.cells().get(column))
                .filter(cell -> cell.ratio().isPresent() && cell.ratio().getAsDouble() > 0)
                .map(cell -> new Reading(cell.ratio().getAsDouble(), cell.ratioBand()));
    }
}
