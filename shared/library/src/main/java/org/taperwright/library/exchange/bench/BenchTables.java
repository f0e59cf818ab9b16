package org.taperwright.library.exchange.bench;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.exchange.csv.CsvCell;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvLimits;
import org.taperwright.library.exchange.csv.CsvReader;
import org.taperwright.library.exchange.csv.CsvRow;
import org.taperwright.library.exchange.csv.CsvText;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.measured.Measured;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.mechanics.measured.MeasuredLives;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.work.Fault;

/**
 * Reads a table of measurements. Its headings say which it is: {@code angle} and {@code torque} (twisting), {@code angle} and
 * {@code moment} (bending), or {@code radius}, {@code angle} and {@code cycles} of tubes (turning to fracture), there with
 * {@code level} for the instrument's level at the middle of the curve, 5 mm if not given. Other columns are passed over.
 */
public final class BenchTables {
    private static final double USUAL_LEVEL_MM = Tube.USUAL.middleMm();
    private static final Place START = new Place(1, 1);

    private BenchTables() {}

    /**
     * Reads a table.
     *
     * @param label name of the measurements for people, such as the file's
     */
    public static BenchTable read(String text, CsvFormat format, String label) {
        CsvReader reader = new CsvReader(new StringReader(text), format.delimiter(), CsvLimits.USUAL);
        Optional<CsvRow> first = reader.next();
        if (first.isEmpty()) {
            return refused(START, "file", "is empty", "headings, then measurements");
        }
        if (!(first.get() instanceof CsvRow.Whole headings)) {
            return new BenchTable.Refused(List.of(fault(first.get())));
        }
        Map<BenchColumn, Integer> places = new EnumMap<>(BenchColumn.class);
        Map<BenchColumn, Double> factors = new EnumMap<>(BenchColumn.class);
        for (int i = 0; i < headings.cells().size(); i++) {
            int place = i;
            BenchColumn.of(CsvText.of(headings.cells().get(i))).ifPresent(found -> {
                if (places.putIfAbsent(found.column(), place) == null) {
                    factors.put(found.column(), found.factor());
                }
            });
        }
        Optional<Set<BenchColumn>> needed = needed(places.keySet());
        if (needed.isEmpty()) {
            return refused(
                    headings.place(),
                    "headings",
                    "do not say what was measured",
                    "angle (°) with torque (N·mm) or moment (N·mm), or radius (mm), angle (°) and cycles");
        }
        List<PlacedFault> passed = new ArrayList<>();
        List<Map<BenchColumn, Double>> rows = rows(reader, places, factors, needed.get(), passed);
        if (rows.isEmpty()) {
            passed.add(0, new PlacedFault(START, Fault.impossible("file", "holds no measurement", "rows of numbers")));
            return new BenchTable.Refused(passed);
        }
        return new BenchTable.Read(measured(needed.get(), rows, label), passed);
    }

    private static Optional<Set<BenchColumn>> needed(Set<BenchColumn> there) {
        return List.of(
                        Set.of(BenchColumn.RADIUS, BenchColumn.ANGLE, BenchColumn.CYCLES),
                        Set.of(BenchColumn.ANGLE, BenchColumn.TORQUE),
                        Set.of(BenchColumn.ANGLE, BenchColumn.MOMENT))
                .stream()
                .filter(there::containsAll)
                .findFirst();
    }

    private static List<Map<BenchColumn, Double>> rows(
            CsvReader reader,
            Map<BenchColumn, Integer> places,
            Map<BenchColumn, Double> factors,
            Set<BenchColumn> needed,
            List<PlacedFault> passed) {
        List<Map<BenchColumn, Double>> rows = new ArrayList<>();
        for (Optional<CsvRow> row = reader.next(); row.isPresent(); row = reader.next()) {
            if (!(row.get() instanceof CsvRow.Whole whole)) {
                passed.add(fault(row.get()));
                continue;
            }
            Map<BenchColumn, Double> values = new EnumMap<>(BenchColumn.class);
            List<PlacedFault> faults = new ArrayList<>();
            places.forEach((column, place) -> {
                if (needed.contains(column) || column == BenchColumn.LEVEL) {
                    read(whole, column, place, factors.get(column), values, faults);
                }
            });
            if (faults.isEmpty() && needed.contains(BenchColumn.CYCLES)) {
                tubeFault(whole, values).ifPresent(faults::add);
            }
            passed.addAll(faults);
            if (faults.isEmpty()) {
                rows.add(values);
            }
        }
        return rows;
    }

    private static void read(
            CsvRow.Whole row,
            BenchColumn column,
            int place,
            double factor,
            Map<BenchColumn, Double> values,
            List<PlacedFault> faults) {
        if (place >= row.cells().size()) {
            faults.add(new PlacedFault(
                    row.place(),
                    Fault.impossible(column.word(), "is missing", "a row of at least " + (place + 1) + " cells")));
            return;
        }
        CsvCell cell = row.cells().get(place);
        Entry entry = Entry.read(CsvText.of(cell), Unit.NONE, column.word());
        if (entry instanceof Entry.Given given) {
            values.put(column, given.value() * factor);
        } else {
            faults.add(new PlacedFault(cell.place(), ((Entry.Faulty) entry).fault()));
        }
    }

    /** What keeps a row from being a life in a tube. */
    private static Optional<PlacedFault> tubeFault(CsvRow.Whole row, Map<BenchColumn, Double> values) {
        boolean tube = values.get(BenchColumn.RADIUS) > 0
                && values.get(BenchColumn.ANGLE) > 0
                && values.get(BenchColumn.ANGLE) <= 180
                && values.getOrDefault(BenchColumn.LEVEL, USUAL_LEVEL_MM) >= 0;
        if (tube && values.get(BenchColumn.CYCLES) > 0) {
            return Optional.empty();
        }
        return Optional.of(new PlacedFault(
                row.place(),
                Fault.impossible(
                        "row",
                        "is no life in a tube",
                        "a radius and cycles above zero, and an angle above 0 and up to 180°")));
    }

    private static Measured measured(Set<BenchColumn> needed, List<Map<BenchColumn, Double>> rows, String label) {
        if (needed.contains(BenchColumn.CYCLES)) {
            return new MeasuredLives(
                    label,
                    rows.stream()
                            .map(row -> new MeasuredLives.Life(
                                    new Tube(
                                            row.get(BenchColumn.ANGLE),
                                            row.get(BenchColumn.RADIUS),
                                            row.getOrDefault(BenchColumn.LEVEL, USUAL_LEVEL_MM),
                                            Tube.USUAL.playMm()),
                                    row.get(BenchColumn.CYCLES)))
                            .toList());
        }
        boolean twisting = needed.contains(BenchColumn.TORQUE);
        BenchColumn ordinate = twisting ? BenchColumn.TORQUE : BenchColumn.MOMENT;
        return new MeasuredCurve(
                twisting ? BenchCurve.TWISTING : BenchCurve.BENDING,
                label,
                rows.stream()
                        .map(row -> new CurvePoint(row.get(BenchColumn.ANGLE), row.get(ordinate)))
                        .toList());
    }

    private static PlacedFault fault(CsvRow row) {
        return row instanceof CsvRow.Broken broken ? broken.fault() : ((CsvRow.Refused) row).fault();
    }

    private static BenchTable refused(Place place, String where, String what, String expected) {
        return new BenchTable.Refused(List.of(new PlacedFault(place, Fault.impossible(where, what, expected))));
    }
}
