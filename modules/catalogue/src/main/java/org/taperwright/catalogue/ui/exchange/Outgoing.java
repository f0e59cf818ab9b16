package org.taperwright.catalogue.ui.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.TableExport;
import org.taperwright.library.exchange.table.TableKind;
import org.taperwright.library.exchange.text.WholeFile;
import org.taperwright.library.exchange.transfer.Selection;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/**
 * Things on their way into a file: in JSON form with everything they refer to, or a kind of them as a table. The file takes
 * the place of an older one only when it is written whole.
 *
 * @param library the library
 * @param ids the things
 * @param to the file
 */
record Outgoing(Snapshot library, List<ThingId> ids, Path to) implements Work<String> {
    Outgoing {
        ids = List.copyOf(ids);
    }

    private boolean table() {
        return to.getFileName().toString().toLowerCase(java.util.Locale.ROOT).endsWith(".csv");
    }

    /** Writes the file; what was written, in words. */
    @Override
    public String run(Progress progress) {
        try {
            List<String> words = new ArrayList<>();
            WholeFile.write(to, out -> words.add(table() ? writeTable(out, progress) : writeForms(out)));
            return words.get(0) + " written to " + to;
        } catch (IOException failure) {
            throw new UncheckedIOException(to + " was not written: " + failure.getMessage(), failure);
        }
    }

    private String writeForms(Writer out) throws IOException {
        LibraryBundle bundle = Selection.of(library, ids).bundle();
        JsonForms.write(bundle, out);
        return bundle.items().size() + (bundle.items().size() == 1 ? " thing" : " things");
    }

    /** The table of the kind of the first thing that has one; things of other kinds stay out. */
    private String writeTable(Writer out, Progress progress) throws IOException {
        TableKind kind = ids.stream()
                .flatMap(id -> library.entry(id).stream())
                .flatMap(entry -> List.of(TableKind.values()).stream().filter(each -> each.thing() == entry.kind()))
                .findFirst()
                .orElse(TableKind.INSTRUMENTS);
        TableExport table = new TableExport(kind, out, CsvFormat.USUAL);
        table.begin();
        List<Entry> rows = ids.stream()
                .flatMap(id -> library.entry(id).stream())
                .filter(entry -> entry.kind() == kind.thing())
                .toList();
        for (Entry entry : rows) {
            progress.check();
            table.row(new LibraryBundle.Item(entry.id(), entry.thing()));
        }
        return rows.size() + (rows.size() == 1 ? " row" : " rows");
    }
}
