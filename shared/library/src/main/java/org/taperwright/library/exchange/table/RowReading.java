package org.taperwright.library.exchange.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.library.exchange.csv.CsvCell;
import org.taperwright.library.exchange.csv.CsvRow;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;

/** Makes things of rows: the values of the cells are put into the thing's form, which is then read as from JSON. */
final class RowReading {
    private final String source;
    private final TableKind kind;
    /** By column of the file; empty where it is passed over. */
    private final List<Optional<CellReading>> columns;

    private final RowBases bases;

    RowReading(String source, TableKind kind, List<Optional<CellReading>> columns, Known known) {
        this.source = source;
        this.kind = kind;
        this.columns = List.copyOf(columns);
        this.bases = new RowBases(kind, known);
    }

    TableRow read(CsvRow.Whole row) {
        List<PlacedFault> faults = new ArrayList<>();
        Doubts doubts = new Doubts();
        Map<TableField, Optional<Node>> values = values(row, faults, doubts);
        Place place = row.place();
        if (faults.isEmpty()) {
            RowBases.Found base = bases.of(values, place);
            if (base instanceof RowBases.Base there) {
                faults.addAll(doubts.in(there.tree()));
            } else {
                faults.addAll(((RowBases.Faulty) base).faults());
            }
            if (faults.isEmpty() && base instanceof RowBases.Base there) {
                ReadResult read = JsonForms.read(there.with(values), source, EnumSet.of(kind.thing()));
                return result(row, read);
            }
        }
        return new TableRow.Bad(
                place.line(),
                row.verbatim(),
                faults.stream().map(fault -> FileFault.of(source, fault)).toList());
    }

    private TableRow result(CsvRow.Whole row, ReadResult result) {
        int line = row.place().line();
        if (result instanceof ReadResult.Read read) {
            return new TableRow.Good(
                    line, read.things().get(0).id(), read.things().get(0).thing(), row.verbatim());
        }
        return new TableRow.Bad(
                line,
                row.verbatim(),
                ((ReadResult.Refused) result)
                        .faults().stream().map(this::namingTheField).toList());
    }

    private Map<TableField, Optional<Node>> values(CsvRow.Whole row, List<PlacedFault> faults, Doubts doubts) {
        List<CsvCell> cells = row.cells();
        boolean more = cells.stream()
                .skip(columns.size())
                .anyMatch(cell -> !cell.text().isBlank());
        if (more || cells.size() < columns.size()) {
            faults.add(new PlacedFault(
                    cells.get(Math.min(cells.size(), columns.size() + 1) - 1).place(),
                    Fault.impossible(
                            "row",
                            "has " + cells.size() + (cells.size() == 1 ? " cell" : " cells"),
                            "expected " + columns.size() + ", as there are headings")));
            return Map.of();
        }
        Map<TableField, Optional<Node>> values = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).isPresent()) {
                CellReading column = columns.get(i).get();
                CellReading.Found found = column.read(cells.get(i));
                if (found instanceof CellReading.Faulty faulty) {
                    faults.add(new PlacedFault(cells.get(i).place(), faulty.fault()));
                } else if (found instanceof CellReading.Value value) {
                    values.put(column.field(), Optional.of(value.node()));
                    value.doubt().ifPresent(doubt -> doubts.add(column.field(), value.node(), doubt));
                } else {
                    values.put(column.field(), Optional.empty());
                }
            }
        }
        return values;
    }

    /** The fault in the words of the table: the field of the form gives way to the column's. */
    private FileFault namingTheField(FileFault fault) {
        String where = fault.fault().where();
        String name = kind.fields().stream()
                .filter(field -> where.startsWith(field.path()))
                .max((one, other) ->
                        Integer.compare(one.path().length(), other.path().length()))
                .map(TableField::heading)
                .orElse(where);
        Fault named = new Fault(
                fault.fault().weight(),
                name,
                fault.fault().what(),
                fault.fault().expected());
        return new FileFault(fault.source(), fault.line(), fault.column(), named);
    }

    /** Values that are wrong unless the thing has them already. */
    private static final class Doubts {
        private record Doubt(TableField field, Node value, Fault fault) {}

        private final List<Doubt> doubts = new ArrayList<>();

        void add(TableField field, Node value, Fault fault) {
            doubts.add(new Doubt(field, value, fault));
        }

        /** Those that a thing has not. */
        List<PlacedFault> in(Node.ObjectNode tree) {
            List<PlacedFault> wrong = new ArrayList<>();
            for (Doubt doubt : doubts) {
                boolean has = doubt.field()
                        .placing()
                        .in(tree)
                        .filter(there -> DesignPlacings.same(there, doubt.value()))
                        .isPresent();
                if (!has) {
                    wrong.add(new PlacedFault(doubt.value().place(), doubt.fault()));
                }
            }
            return wrong;
        }
    }
}
