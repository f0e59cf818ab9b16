package org.taperwright.library.exchange.course;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.taperwright.library.exchange.csv.CsvCell;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvLimits;
import org.taperwright.library.exchange.csv.CsvReader;
import org.taperwright.library.exchange.csv.CsvRow;
import org.taperwright.library.exchange.csv.CsvText;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.work.Fault;

/**
 * Reads a canal from a table whose rows are places along it, from the orifice to its end. Headings: {@code x}, {@code y} and, in
 * space, {@code z} (mm); {@code diameter}, or {@code wide}, {@code narrow} and {@code azimuth} of the opening; {@code root wide},
 * {@code root narrow} and {@code root azimuth} of the root's outline. Openings and outlines may be left out in any row; azimuths are
 * from the side of the first bend. Other columns are passed over.
 */
public final class CanalTables {
    private static final int MOST_POINTS = 2_000;

    private CanalTables() {}

    /**
     * Reads a table.
     *
     * @param name what the canal is called, such as the file's name
     * @param referenceMm distance from the coronal reference point to the orifice, from the canal's length, both mm
     */
    public static CanalTable read(String text, CsvFormat format, String name, DoubleUnaryOperator referenceMm) {
        CsvReader reader = new CsvReader(new StringReader(text), format.delimiter(), CsvLimits.USUAL);
        Optional<CsvRow> first = reader.next();
        if (first.isEmpty()) {
            return refused(Place.START, "file", "is empty", "headings, then a row for each place along the canal");
        }
        if (!(first.get() instanceof CsvRow.Whole headings)) {
            return new CanalTable.Refused(List.of(fault(first.get())));
        }
        Map<CourseColumn, Integer> places = new EnumMap<>(CourseColumn.class);
        Map<CourseColumn, Double> factors = new EnumMap<>(CourseColumn.class);
        for (int i = 0; i < headings.cells().size(); i++) {
            int place = i;
            CourseColumn.of(CsvText.of(headings.cells().get(i))).ifPresent(found -> {
                if (places.putIfAbsent(found.column(), place) == null) {
                    factors.put(found.column(), found.factor());
                }
            });
        }
        if (!places.containsKey(CourseColumn.X) || !places.containsKey(CourseColumn.Y)) {
            return refused(
                    headings.place(), "headings", "do not say where the points are", "x, y and, in space, z, in mm");
        }
        if (!places.containsKey(CourseColumn.DIAMETER) && !places.containsKey(CourseColumn.WIDE)) {
            return refused(
                    headings.place(),
                    "headings",
                    "do not say how wide the canal is",
                    "diameter, or wide and narrow, in mm, in two rows at least");
        }
        List<PlacedFault> faults = new ArrayList<>();
        List<CoursePoint> points = points(reader, places, factors, faults);
        return faults.isEmpty() ? new CourseReading(points, name, referenceMm).read() : new CanalTable.Refused(faults);
    }

    private static List<CoursePoint> points(
            CsvReader reader,
            Map<CourseColumn, Integer> places,
            Map<CourseColumn, Double> factors,
            List<PlacedFault> faults) {
        List<CoursePoint> points = new ArrayList<>();
        for (Optional<CsvRow> row = reader.next(); row.isPresent(); row = reader.next()) {
            if (!(row.get() instanceof CsvRow.Whole whole)) {
                faults.add(fault(row.get()));
                continue;
            }
            if (points.size() == MOST_POINTS) {
                faults.add(new PlacedFault(
                        whole.place(),
                        Fault.impossible(
                                "points", "there are more than " + MOST_POINTS, "fewer points, such as each tenth")));
                return points;
            }
            Map<CourseColumn, Double> values = new EnumMap<>(CourseColumn.class);
            places.forEach((column, place) -> read(whole, column, place, factors.get(column), values, faults));
            points.add(new CoursePoint(whole.place(), values));
        }
        return points;
    }

    private static void read(
            CsvRow.Whole row,
            CourseColumn column,
            int place,
            double factor,
            Map<CourseColumn, Double> values,
            List<PlacedFault> faults) {
        Optional<CsvCell> cell =
                place < row.cells().size() ? Optional.of(row.cells().get(place)) : Optional.empty();
        boolean empty = cell.map(there -> CsvText.of(there).isBlank()).orElse(true);
        if (empty) {
            if (column.place()) {
                faults.add(new PlacedFault(
                        cell.map(CsvCell::place).orElse(row.place()),
                        Fault.impossible(column.word(), "is missing", "expected a number, mm")));
            }
            return;
        }
        Entry entry = Entry.read(CsvText.of(cell.get()), Unit.NONE, column.word());
        if (entry instanceof Entry.Given given) {
            values.put(column, given.value() * factor);
        } else {
            faults.add(new PlacedFault(cell.get().place(), ((Entry.Faulty) entry).fault()));
        }
    }

    private static PlacedFault fault(CsvRow row) {
        return row instanceof CsvRow.Broken broken ? broken.fault() : ((CsvRow.Refused) row).fault();
    }

    private static CanalTable refused(Place place, String where, String what, String expected) {
        return new CanalTable.Refused(
                List.of(new PlacedFault(place, Fault.impossible(where, what, "expected " + expected))));
    }
}
