package org.taperwright.sequencer.outcome;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.passage.Third;
import org.taperwright.workbench.ui.DataTable;

/** The outcome's lines as numbers for the clipboard and files: each with its band's ends, unit and standing in the heading. */
public final class OutcomeData {
    private OutcomeData() {}

    /** The numbers in full. */
    public static DataTable of(List<OutcomeRow> rows) {
        List<String> headers = new ArrayList<>(List.of("Step", "Instrument", "Third"));
        for (OutcomeColumn column : OutcomeColumn.values()) {
            headers.add(column.label() + " (" + column.unit() + ", "
                    + column.standing().word() + ")");
            if (column.standing() != Standing.COMPUTED) {
                headers.add(column.label() + ", 5 %");
                headers.add(column.label() + ", 95 %");
            }
        }
        List<List<String>> lines = new ArrayList<>();
        String name = "";
        for (OutcomeRow row : rows) {
            name = row.principal() ? row.label() : name;
            lines.add(line(row, name));
        }
        return new DataTable(headers, lines);
    }

    private static List<String> line(OutcomeRow row, String name) {
        List<String> line = new ArrayList<>();
        line.add(row.place().map(place -> Integer.toString(place + 1)).orElse("all"));
        line.add(name.replaceFirst("^\\d+ +", ""));
        line.add(row.third().map(Third::word).orElse(""));
        for (OutcomeColumn column : OutcomeColumn.values()) {
            OutcomeCell cell = row.cell(column);
            line.add(cell.awaited() ? "" : cell.value().map(Object::toString).orElse(""));
            if (column.standing() != Standing.COMPUTED) {
                line.add(cell.band().map(band -> Double.toString(band.low())).orElse(""));
                line.add(cell.band().map(band -> Double.toString(band.high())).orElse(""));
            }
        }
        return line;
    }
}
