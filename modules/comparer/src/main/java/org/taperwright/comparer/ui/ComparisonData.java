package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
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
                    .orElse(List.of("", "", "", "")));
        }
        return line;
    }

    private static List<String> numbers(ComparisonCell cell, boolean ratios) {
        return List.of(
                Double.toString(cell.reading().value()),
                cell.reading().band().map(Band::low).map(Object::toString).orElse(""),
                cell.reading().band().map(Band::high).map(Object::toString).orElse(""),
                ratios && cell.ratio().isPresent()
                        ? Double.toString(cell.ratio().getAsDouble())
                        : "");
    }
}
