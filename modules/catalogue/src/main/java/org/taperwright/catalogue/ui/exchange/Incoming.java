package org.taperwright.catalogue.ui.exchange;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.TableKind;

/**
 * A file to bring in and how a person says it is to be read; what is empty is guessed from the file.
 *
 * @param file the file
 * @param kind what the rows of a table are
 * @param charset the encoding
 * @param format how a table is written
 * @param mapping which of its columns means which field
 */
record Incoming(
        Path file,
        TableKind kind,
        Optional<Charset> charset,
        Optional<CsvFormat> format,
        Optional<ColumnMapping> mapping) {
    /** A file of which nothing is said yet. */
    static Incoming of(Path file, TableKind kind) {
        return new Incoming(file, kind, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it is in JSON form; anything else is read as a table. */
    boolean forms() {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json");
    }

    /** With another kind of rows: everything else is guessed anew. */
    Incoming of(TableKind other) {
        return new Incoming(file, other, charset, Optional.empty(), Optional.empty());
    }

    /** In another encoding: everything else is guessed anew. */
    Incoming in(Charset other) {
        return new Incoming(file, kind, Optional.of(other), Optional.empty(), Optional.empty());
    }

    /** Written otherwise: the headings may be others, so that the mapping is guessed anew. */
    Incoming written(CsvFormat other) {
        return new Incoming(file, kind, Optional.of(other.charset()), Optional.of(other), Optional.empty());
    }

    /** With another mapping of a table written so. */
    Incoming mapped(CsvFormat written, ColumnMapping other) {
        return new Incoming(file, kind, Optional.of(written.charset()), Optional.of(written), Optional.of(other));
    }
}
