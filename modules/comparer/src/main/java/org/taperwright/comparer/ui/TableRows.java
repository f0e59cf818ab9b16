package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.definition.DefinitionRow;
import org.taperwright.mechanics.comparison.definition.Definitions;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;

/** The rows of a result as a view lays them out: pinned ones first, then definitions, then the metrics. */
final class TableRows {
    private TableRows() {}

    static List<TableRow> of(Compared compared, TableView view) {
        List<TableRow> rows = new ArrayList<>();
        compared.comparison().ifPresent(table -> pinned(table, view, rows));
        definitions(compared, view, rows);
        compared.comparison().ifPresent(table -> {
            List<ComparisonRow> rest = table.rows().stream()
                    .filter(row -> !view.rows().pinned().contains(row.metric().id()))
                    .filter(row -> view.hiddenToo()
                            || !view.rows().hidden().contains(row.metric().id()))
                    .toList();
            Optional<Integer> sorted = view.furthest().flatMap(id -> column(compared, id));
            if (sorted.isPresent()) {
                rows.add(new TableRow.GroupHeading("Furthest from the datum first: "
                        + table.columns().get(sorted.get()).design().name()));
                rest.stream()
                        .sorted(Comparator.comparingDouble(row -> -distance(row, sorted.get())))
                        .forEach(row -> rows.add(new TableRow.MetricLine(row)));
            } else {
                grouped(rest, rows);
            }
        });
        return rows;
    }

    private static void pinned(Comparison table, TableView view, List<TableRow> rows) {
        List<TableRow> pinned = new ArrayList<>();
        for (String id : view.rows().pinned()) {
            table.rows().stream()
                    .filter(row -> row.metric().id().equals(id))
                    .forEach(row -> pinned.add(new TableRow.MetricLine(row)));
        }
        if (!pinned.isEmpty()) {
            rows.add(new TableRow.GroupHeading("Pinned"));
            rows.addAll(pinned);
        }
    }

    private static void definitions(Compared compared, TableView view, List<TableRow> rows) {
        List<Design> designs = compared.members().stream()
                .flatMap(member -> member.design().stream())
                .toList();
        // a design gone from the library has no definition to set beside the others
        if (view.definition() == TableView.Definition.NONE
                || designs.size() < compared.members().size()) {
            return;
        }
        rows.add(new TableRow.GroupHeading("Definition"));
        for (DefinitionRow row :
                Definitions.of(designs, compared.members().get(0).alloys())) {
            if (row.differs() || view.definition() == TableView.Definition.ALL) {
                rows.add(new TableRow.DefinitionLine(row));
            }
        }
    }

    private static void grouped(List<ComparisonRow> rest, List<TableRow> rows) {
        Optional<MetricGroup> group = Optional.empty();
        for (ComparisonRow row : rest) {
            if (!group.equals(Optional.of(row.metric().group()))) {
                group = Optional.of(row.metric().group());
                rows.add(new TableRow.GroupHeading(row.metric().group().label()));
            }
            rows.add(new TableRow.MetricLine(row));
        }
    }

    private static double distance(ComparisonRow row, int column) {
        OptionalDouble ratio = row.cells().get(column).ratio();
        return ratio.isPresent() && ratio.getAsDouble() > 0 ? Math.abs(Math.log(ratio.getAsDouble())) : -1;
    }

    private static Optional<Integer> column(Compared compared, ThingId id) {
        for (int i = 0; i < compared.members().size(); i++) {
            if (compared.members().get(i).id().equals(id)) {
                return compared.column(i);
            }
        }
        return Optional.empty();
    }
}
