package org.taperwright.library.exchange.csv;

import java.util.List;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;

/** What a reader finds next. */
public sealed interface CsvRow {
    /**
     * A row that can be told apart into cells.
     *
     * @param place where it begins
     * @param cells its cells, at least one
     * @param verbatim as it stood, without its line end
     */
    record Whole(Place place, List<CsvCell> cells, String verbatim) implements CsvRow {
        public Whole {
            cells = List.copyOf(cells);
        }

        /** Whether every cell is empty or blank. */
        public boolean blank() {
            return cells.stream().allMatch(cell -> cell.text().isBlank());
        }
    }

    /** A line that cannot be told apart into cells, why, and as it stood; reading goes on with the next line. */
    record Broken(PlacedFault fault, String verbatim) implements CsvRow {}

    /** Reading cannot go on; why. */
    record Refused(PlacedFault fault) implements CsvRow {}
}
