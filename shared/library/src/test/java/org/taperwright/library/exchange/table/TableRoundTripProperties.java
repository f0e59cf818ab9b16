package org.taperwright.library.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.ArbitraryThings;
import org.taperwright.library.exchange.FormDifference;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Motor;

/** Whatever stands in the library, its table read back into it changes nothing. */
class TableRoundTripProperties {
    private static final ThingId ID = new ThingId("any");

    @Provide
    Arbitrary<Record> tabled() {
        return Arbitraries.oneOf(
                ArbitraryThings.instrument().map(Record.class::cast),
                ArbitraryThings.motor().map(Record.class::cast));
    }

    @Property(tries = 500, shrinking = ShrinkingMode.OFF)
    void aTableReadBackChangesNothing(@ForAll("tabled") Record thing, @ForAll boolean comma) throws IOException {
        TableKind kind = thing instanceof Motor ? TableKind.MOTORS : TableKind.INSTRUMENTS;
        CsvFormat format = comma ? new CsvFormat(CsvFormat.USUAL.charset(), ';', ',') : CsvFormat.USUAL;
        StringBuilder text = new StringBuilder();
        TableExport export = new TableExport(kind, text, format);
        export.begin();
        export.row(new Item(ID, thing));
        List<String> headings = kind.fields().stream()
                .filter(TableField::exported)
                .map(TableField::written)
                .toList();
        Tables.Collected back = Tables.read(
                ColumnMapping.guessed(kind, headings),
                format,
                text.toString(),
                Known.of(Examples.snapshotOf(Map.of(ID, thing))));
        assertThat(back.faults()).as(text.toString()).isEmpty();
        assertThat(back.good().get(0).id()).isEqualTo(ID);
        Record read = back.good().get(0).thing();
        assertThat(FormDifference.between(thing, read)).isEmpty();
        assertThat(read).isEqualTo(thing);
    }
}
