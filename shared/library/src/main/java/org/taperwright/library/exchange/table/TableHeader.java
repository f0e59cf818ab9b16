package org.taperwright.library.exchange.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.taperwright.library.exchange.csv.CsvCell;
import org.taperwright.library.exchange.csv.CsvRow;
import org.taperwright.library.exchange.csv.CsvText;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;

/**
 * The first row of a table.
 *
 * @param verbatim as it stood, without the column of reasons
 * @param headings its headings, without that one
 * @param reasons which column says why rows were not read
 */
record TableHeader(String verbatim, List<String> headings, OptionalInt reasons) {
    private static final int LONGEST = 200;

    /** What came of reading it. */
    sealed interface Found {}

    record Read(TableHeader header) implements Found {}

    record Faulty(PlacedFault fault) implements Found {}

    static Found of(Optional<CsvRow> first) {
        if (first.isEmpty()) {
            return faulty(Place.START, "is empty", "expected a table whose first row has the headings");
        }
        if (first.get() instanceof CsvRow.Refused refused) {
            return new Faulty(refused.fault());
        }
        if (first.get() instanceof CsvRow.Broken broken) {
            return new Faulty(broken.fault());
        }
        return of((CsvRow.Whole) first.get());
    }

    private static Found of(CsvRow.Whole row) {
        List<String> all = row.cells().stream().map(CsvText::of).toList();
        for (CsvCell cell : row.cells()) {
            if (cell.text().length() > LONGEST) {
                return faulty(
                        cell.place(),
                        "has a heading of " + cell.text().length() + " characters",
                        "expected at most " + LONGEST);
            }
        }
        OptionalInt reasons = IntStream.range(0, all.size())
                .filter(i -> Headings.reason(all.get(i)))
                .findFirst();
        List<String> headings = IntStream.range(0, all.size())
                .filter(i -> reasons.isEmpty() || i != reasons.getAsInt())
                .mapToObj(all::get)
                .toList();
        return new Read(new TableHeader(withoutReason(row, reasons), headings, reasons));
    }

    /** The row's text without the cell of the reason, when it is the first, as it is where the program wrote it. */
    static String withoutReason(CsvRow.Whole row, OptionalInt reasons) {
        boolean first =
                reasons.isPresent() && reasons.getAsInt() == 0 && row.cells().size() > 1;
        if (!first) {
            return row.verbatim();
        }
        CsvCell second = row.cells().get(1);
        int from = offset(row.verbatim(), row.place(), second.place());
        return row.verbatim().substring(from);
    }

    /** Where a place stands in a text that begins at another. */
    private static int offset(String text, Place begin, Place place) {
        int lines = place.line() - begin.line();
        int at = 0;
        for (int i = 0; lines > 0; i++) {
            char sign = text.charAt(i);
            boolean end = sign == '\n' || sign == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
            if (end) {
                lines--;
                at = i + 1;
            }
        }
        return at + place.column() - 1;
    }

    private static Found faulty(Place place, String what, String expected) {
        return new Faulty(new PlacedFault(place, Fault.impossible("file", what, expected)));
    }

    /** A row without the cell of the reason. */
    CsvRow.Whole stripped(CsvRow.Whole row) {
        if (reasons.isEmpty()
                || row.cells().size() <= reasons.getAsInt()
                || row.cells().size() == 1) {
            return row;
        }
        List<CsvCell> cells = IntStream.range(0, row.cells().size())
                .filter(i -> i != reasons.getAsInt())
                .mapToObj(row.cells()::get)
                .toList();
        return new CsvRow.Whole(row.place(), cells, withoutReason(row, reasons));
    }
}
