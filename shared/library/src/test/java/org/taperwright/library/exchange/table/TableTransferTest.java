package org.taperwright.library.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.exchange.LibraryBundle.Item;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;
import org.taperwright.shaping.instrument.Motor;

/** Tables written, mended and read again, and mappings kept. */
class TableTransferTest {
    private static String written(TableKind kind, CsvFormat format, Map<ThingId, Record> things) throws IOException {
        StringBuilder text = new StringBuilder();
        TableExport export = new TableExport(kind, text, format);
        export.begin();
        for (Map.Entry<ThingId, Record> each : things.entrySet()) {
            export.row(new Item(each.getKey(), each.getValue()));
        }
        return text.toString();
    }

    @Test
    void aTableOfMotorsComesBackWholeIntoAnyLibrary() throws IOException {
        Map<ThingId, Record> motors = new LinkedHashMap<>();
        motors.put(Examples.MOTOR_ID, Examples.motor());
        for (CsvFormat format : List.of(CsvFormat.USUAL, new CsvFormat(CsvFormat.USUAL.charset(), ';', ','))) {
            Tables.Collected back =
                    Tables.read(TableKind.MOTORS, written(TableKind.MOTORS, format, motors), Known.NOTHING);
            assertThat(back.faults()).isEmpty();
            Motor motor = (Motor) back.good().get(0).thing();
            assertThat(motor).isEqualTo(Examples.motor());
            assertThat(back.good().get(0).id()).isEqualTo(Examples.MOTOR_ID);
        }
    }

    @Test
    void theHeadingsWrittenAreAllKnownWhenRead() {
        for (TableKind kind : TableKind.values()) {
            List<String> headings = kind.fields().stream()
                    .filter(TableField::exported)
                    .map(TableField::written)
                    .toList();
            ColumnMapping mapping = ColumnMapping.guessed(kind, headings);
            assertThat(mapping.columns().stream().map(column -> column.field().orElse("none")))
                    .containsExactlyElementsOf(kind.fields().stream()
                            .filter(TableField::exported)
                            .map(TableField::heading)
                            .toList());
        }
    }

    @Test
    void badRowsAreWrittenAsTheyStoodAndReadAgainOnceMended() throws IOException {
        String text = "name;size;taper;note\na;x;0,04;\"one\r\ntwo\"\nb;25;0,04;fine\nc;25;0,04;\"open\nd;30;0,06;\n";
        Tables.Collected first = Tables.read(TableKind.INSTRUMENTS, text, Known.NOTHING);
        assertThat(first.good()).extracting(TableRow.Good::line).containsExactly(4, 6);
        CsvFormat format = new CsvFormat(CsvFormat.USUAL.charset(), ';', ',');
        StringBuilder rejects = new StringBuilder();
        RejectedRows rejected = new RejectedRows(rejects, format);
        rejected.begin(first.headers.get(0));
        for (TableRow.Bad row : first.bad()) {
            rejected.row(row);
        }
        assertThat(rejects.toString())
                .startsWith("Not read because;name;size;taper;note\r\n\"line 2, column 3: Size: found ")
                .contains("\";a;x;0,04;\"one\r\ntwo\"\r\n")
                .contains("never closes; expected a closing double quote\";c;25;0,04;\"open\r\n");
        // mended as a person would: a size, and the quote closed
        String mended = rejects.toString().replace(";x;", ";20;").replace("\"open", "\"open\"");
        Tables.Collected second = Tables.read(TableKind.INSTRUMENTS, mended, Known.NOTHING);
        assertThat(second.faults()).isEmpty();
        assertThat(second.good()).hasSize(2);
        assertThat(second.headers).isEqualTo(first.headers);
        // and not mended, the rows are rejected as they were, without growing
        Tables.Collected again = Tables.read(TableKind.INSTRUMENTS, rejects.toString(), Known.NOTHING);
        assertThat(again.bad().get(0).verbatim()).isEqualTo(first.bad().get(0).verbatim());
    }

    @Test
    void aMappingIsKeptForTablesWithTheSameHeadings() {
        List<String> headings = List.of("Größe", "Konus", "Preis", "Foo");
        ColumnMapping mapping = ColumnMapping.guessed(TableKind.INSTRUMENTS, headings)
                .with(0, Optional.of("Size"), Optional.of("mm"))
                .with(1, Optional.of("Taper"), Optional.empty())
                .with(2, Optional.of("Price"), Optional.of("EUR"));
        ColumnMappings kept = ColumnMappings.NONE.keeping(mapping);
        ColumnMappings.Result read = ColumnMappings.read(kept.text(), "m.json");
        assertThat(((ColumnMappings.Read) read).mappings()).isEqualTo(kept);
        assertThat(kept.find(TableKind.INSTRUMENTS, List.of("Not read because", "grösse", "KONUS", "Preis ", "foo")))
                .isEmpty();
        assertThat(kept.find(TableKind.INSTRUMENTS, List.of("Not read because", "größe", "KONUS", "Preis ", "foo")))
                .contains(mapping);
        assertThat(kept.find(TableKind.MOTORS, headings)).isEmpty();
        assertThat(kept.keeping(mapping.with(3, Optional.of("Note"), Optional.empty()))
                        .mappings())
                .hasSize(1);
    }

    @Test
    void aMappingThatCannotBeIsRefused() {
        ColumnMapping guess = ColumnMapping.guessed(TableKind.INSTRUMENTS, List.of("size", "other"));
        assertThatThrownBy(() -> guess.with(1, Optional.of("Nonsense"), Optional.empty()))
                .hasMessageContaining("Nonsense");
        assertThatThrownBy(() -> guess.with(0, Optional.of("Length"), Optional.of("kg")))
                .hasMessageContaining("kg");
        assertThat(guess.with(1, Optional.of("Size"), Optional.empty())
                        .columns()
                        .get(0)
                        .field())
                .isEmpty();
        String spoilt = ColumnMappings.NONE.keeping(guess).text().replace("\"Size\"", "\"Sise\"");
        assertThat(((ColumnMappings.Refused) ColumnMappings.read(spoilt, "m.json"))
                        .faults()
                        .get(0)
                        .sentence())
                .contains("names the field \"Sise\", which there is not");
    }

    @Test
    void aTableWithOtherHeadingsThanTheMappingIsRefused() {
        ColumnMapping mapping = ColumnMapping.guessed(TableKind.INSTRUMENTS, List.of("size", "taper"));
        Tables.Collected collected = Tables.read(mapping, CsvFormat.USUAL, "size,lot\n25,x\n", Known.NOTHING);
        assertThat(((TableOutcome.Refused) collected.outcome.orElseThrow())
                        .fault()
                        .sentence())
                .isEqualTo("t.csv:1:1: headings: are not those of the mapping; expected size, taper");
    }

    @Test
    void thePreviewReadsOnlyTheBeginning() {
        String text = "size,taper\n" + "25,.04\n".repeat(100_000);
        TablePreview.Shown shown = (TablePreview.Shown) Tables.preview(text);
        assertThat(shown.rows()).hasSize(20);
    }

    @Test
    void readingStopsWhenItIsNoLongerWanted() {
        Tables.Collected collected = new Tables.Collected();
        Progress unwanted = new Progress() {
            @Override
            public void at(double fraction, String what) {
                assertThat(fraction).isBetween(0.0, 1.0);
            }

            @Override
            public boolean cancelled() {
                return collected.rows.size() >= 1000;
            }
        };
        ColumnMapping mapping = ColumnMapping.guessed(TableKind.INSTRUMENTS, List.of("size", "taper"));
        TableReading reading = new TableReading(
                Tables.source("size,taper\n" + "25,.04\n".repeat(5000)), CsvFormat.USUAL, Known.NOTHING);
        assertThatThrownBy(() -> reading.read(mapping, collected, unwanted)).isInstanceOf(WorkCancelled.class);
        assertThat(collected.rows).hasSizeLessThan(2000);
    }
}
