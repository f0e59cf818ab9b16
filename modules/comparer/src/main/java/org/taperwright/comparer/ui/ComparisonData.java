package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.workbench.ui.DataTable;

/** The comparison's numbers, unrounded, for spreadsheets and scripts. */
final class ComparisonData {
    private ComparisonData() {}

    static DataTable of(ComparisonTableModel model) {
        List<String> headers = new ArrayList<>(List.of("group", "metric", "unit", "wanted", "standing"));
        List<List<String>> rows = new ArrayList<>();
        model.compared().ifPresent(compared -> {
            for (Member member : compared.members()) {
                headers.add(member.name());
                headers.add(member.name() + ", low");
                headers.add(member.name() + ", high");
                headers.add(member.name() + ", ratio to datum");
                headers.add(member.name() + ", ratio, low");
                headers.add(member.name() + ", ratio, high");
            }
            compared.comparison()
                    .ifPresent(comparison -> comparison.rows().forEach(row -> rows.add(line(compared, row))));
        });
        return new DataTable(headers, rows);
    }

    private static List<String> line(Compared compared, ComparisonRow row) {
        List<String> line = new ArrayList<>(List.of(
                row.metric().group().label(),
                row.metric().label(),
                row.metric().unit(),
                ComparisonTableModel.wanted(row.metric()),
                row.metric().standing().word()));
        boolean ratios = compared.datumMember().isPresent();
        for (int member = 0; member < compared.members().size(); member++) {
            line.addAll(compared.column(member)
                    .map(column -> numbers(row.cells().get(column), ratios))
                    .orElse(List.of("", "", "", "", "", "")));
        }
        return line;
    }

    private static List<String> numbers(ComparisonCell cell, boolean ratios) {
        OptionalDouble ratio = ratios ? cell.ratio() : OptionalDouble.empty();
        Optional<Band> ratioBand = ratios ? cell.ratioBand() : Optional.empty();
        return List.of(
                Double.toString(cell.reading().value()),
                end(cell.reading().band(), Band::low),
                end(cell.reading().band(), Band::high),
                ratio.isPresent() ? Double.toString(ratio.getAsDouble()) : "",
                end(ratioBand, Band::low),
                end(ratioBand, Band::high));
    }

    private static String end(Optional<Band> band, ToDoubleFunction<Band> which) {
        return band.map(b -> Double.toString(which.applyAsDouble(b))).orElse("");
    }
}
