package org.taperwright.library.exchange.table;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.csv.CsvWriter;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.mechanics.quantity.Unit;

/**
 * Writes instruments or motors as a table. Read again into the library they came from it changes nothing; another library
 * has the instruments' designs by size, taper and what else the columns say, the rest assumed.
 */
public final class TableExport {
    private final TableKind kind;
    private final CsvWriter out;
    private final CsvFormat format;
    private final List<TableField> fields;

    /** Writes to an appendable, which stays open. */
    public TableExport(TableKind kind, Appendable out, CsvFormat format) {
        this.kind = kind;
        this.out = new CsvWriter(out, format);
        this.format = format;
        this.fields = kind.fields().stream().filter(TableField::exported).toList();
    }

    /** The headings. */
    public void begin() throws IOException {
        out.texts(fields.stream().map(TableField::written).toList());
    }

    /** A thing; it must be of the table's kind. */
    public void row(LibraryBundle.Item item) throws IOException {
        if (!kind.thing().type().isInstance(item.thing())) {
            throw new IllegalArgumentException(
                    item.id() + " is no " + kind.thing().word());
        }
        Node.ObjectNode tree = JsonForms.tree(item.id(), item.thing());
        for (TableField field : fields) {
            cell(field, field.placing().in(tree));
        }
        out.endRow();
    }

    private void cell(TableField field, Optional<Node> value) throws IOException {
        if (value.isEmpty()) {
            out.empty();
        } else if (value.get() instanceof Node.NumberNode number) {
            number(field, number.value());
        } else if (value.get() instanceof Node.FlagNode flag) {
            out.text(flag.value() ? "yes" : "no");
        } else if (value.get() instanceof Node.TextNode text) {
            out.text(text.value());
        } else {
            throw new IllegalStateException(field.heading() + " is no single value");
        }
    }

    private void number(TableField field, double value) throws IOException {
        BigDecimal exact = BigDecimal.valueOf(value);
        if (value == 0) {
            out.number(value);
        } else if (field.kind() == CellKind.SIZE) {
            BigDecimal size = exact.movePointRight(2);
            boolean clear = size.abs().compareTo(BigDecimal.ONE) >= 0;
            measured(clear, size, exact, Unit.MILLIMETRE);
        } else if (field.kind() == CellKind.TAPER) {
            boolean clear = exact.abs().compareTo(BigDecimal.ONE) < 0;
            measured(clear, exact, exact.movePointRight(2), Unit.PERCENT);
        } else {
            out.number(value);
        }
    }

    /** A bare number where it is clear how it is meant, else one with its unit. */
    private void measured(boolean clear, BigDecimal bare, BigDecimal inUnit, Unit unit) throws IOException {
        if (clear) {
            out.number(bare);
        } else {
            String number = inUnit.toString().replace('.', format.decimal());
            out.text(number + ' ' + unit.symbol());
        }
    }
}
