package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.ThingId;

/** Where a design has been while one of its parameters was moved: its ratios to the datum at each setting seen. */
final class TrialPath {
    private final List<Map<Metric, Double>> seen = new ArrayList<>();
    private Optional<Trial> last = Optional.empty();

    /** Begins anew when another parameter is moved, at the design as it was; forgets everything without a trial. */
    void follow(Optional<Trial> trial, Optional<Compared> before) {
        boolean goesOn = trial.isPresent()
                && last.filter(known -> trial.get().continues(known)).isPresent();
        if (!goesOn) {
            seen.clear();
            trial.ifPresent(moved -> before.ifPresent(compared -> add(compared, moved.id())));
        }
        last = trial;
    }

    /** Takes up a result of the trial. */
    void add(Compared compared, ThingId id) {
        for (int i = 0; i < compared.members().size(); i++) {
            Optional<Integer> column = compared.column(i);
            if (compared.members().get(i).id().equals(id) && column.isPresent()) {
                compared.comparison().ifPresent(table -> seen.add(ratios(table, column.get())));
            }
        }
    }

    /** The ratios at each setting, in the order seen. */
    List<Map<Metric, Double>> ratios() {
        return List.copyOf(seen);
    }

    private static Map<Metric, Double> ratios(Comparison table, int column) {
        Map<Metric, Double> ratios = new HashMap<>();
        table.rows()
                .forEach(row -> row.cells().get(column).ratio().ifPresent(ratio -> ratios.put(row.metric(), ratio)));
        return ratios;
    }
}
