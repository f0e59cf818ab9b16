package org.taperwright.library.exchange.table;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.Bytes;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.work.Progress;

/** Reads tables from texts, for tests. */
final class Tables {
    private Tables() {}

    static TextSource source(byte[] bytes) {
        return Bytes.source("t.csv", bytes);
    }

    static TextSource source(String text) {
        return source(text.getBytes(StandardCharsets.UTF_8));
    }

    static TablePreview preview(String text) {
        return preview(source(text), Optional.empty());
    }

    static TablePreview preview(TextSource source, Optional<Charset> charset) {
        return TablePreview.of(source, TableKind.INSTRUMENTS, charset, ColumnMappings.NONE, Known.NOTHING, 20);
    }

    /** All rows, with the format and mapping that the preview suggests. */
    static Collected read(TableKind kind, String text, Known known) {
        TablePreview preview = TablePreview.of(source(text), kind, Optional.empty(), ColumnMappings.NONE, known, 5);
        if (preview instanceof TablePreview.Refused refused) {
            throw new AssertionError(refused.fault().sentence());
        }
        TablePreview.Shown shown = (TablePreview.Shown) preview;
        return read(shown.mapping(), shown.format(), text, known);
    }

    static Collected read(ColumnMapping mapping, CsvFormat format, String text, Known known) {
        Collected collected = new Collected();
        collected.outcome =
                Optional.of(new TableReading(source(text), format, known).read(mapping, collected, Progress.NONE));
        return collected;
    }

    static List<String> sentences(TableRow row) {
        return ((TableRow.Bad) row).faults().stream().map(FileFault::sentence).toList();
    }

    /** Keeps what is read. */
    static final class Collected implements RowSink {
        final List<TableRow> rows = new ArrayList<>();
        final List<String> headers = new ArrayList<>();
        Optional<TableOutcome> outcome = Optional.empty();

        @Override
        public void begin(String header) {
            headers.add(header);
        }

        @Override
        public void row(TableRow row) {
            rows.add(row);
        }

        List<TableRow.Good> good() {
            return rows.stream()
                    .filter(TableRow.Good.class::isInstance)
                    .map(TableRow.Good.class::cast)
                    .toList();
        }

        List<TableRow.Bad> bad() {
            return rows.stream()
                    .filter(TableRow.Bad.class::isInstance)
                    .map(TableRow.Bad.class::cast)
                    .toList();
        }

        /** All faults, a sentence each. */
        List<String> faults() {
            return bad().stream().flatMap(row -> sentences(row).stream()).toList();
        }
    }
}
