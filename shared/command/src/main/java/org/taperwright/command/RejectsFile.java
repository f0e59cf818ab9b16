package org.taperwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.RejectedRows;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TableRow;
import org.taperwright.library.exchange.text.WholeFile;

/**
 * Takes the rows that are not read, of the first reading of their table: tells the first hundred, and writes all of them
 * where it is told to.
 */
final class RejectsFile implements RowSink, AutoCloseable {
    private static final int MOST_TOLD = 100;

    private final Optional<Path> place;
    private final CsvFormat format;
    private final List<String> told = new ArrayList<>();
    private Optional<WholeFile> file = Optional.empty();
    private Optional<RejectedRows> rows = Optional.empty();
    private boolean settled;

    RejectsFile(Optional<Path> place, CsvFormat format) {
        this.place = place;
        this.format = format;
    }

    @Override
    public void begin(String header) {
        if (settled || place.isEmpty()) {
            return;
        }
        if (Files.isDirectory(place.get())) {
            throw BadInput.of("--rejects: " + place.get() + " is a folder", "expected a file");
        }
        try {
            file = Optional.of(WholeFile.begin(place.get()));
        } catch (IOException failure) {
            throw BadInput.of(
                    "--rejects: " + place.get() + " cannot be written", "expected a file in a folder that is there");
        }
        trying(() -> {
            rows = Optional.of(new RejectedRows(file.get().out(), format));
            rows.get().begin(header);
        });
    }

    @Override
    public void row(TableRow row) {
        if (settled || !(row instanceof TableRow.Bad bad)) {
            return;
        }
        if (told.size() < MOST_TOLD) {
            told.add(RejectedRows.sentence(bad));
        }
        trying(() -> {
            if (rows.isPresent()) {
                rows.get().row(bad);
            }
        });
    }

    /** The first of what is wrong, a row each. */
    List<String> told() {
        return List.copyOf(told);
    }

    /** Brings the rows to the disk; later readings of the same table bring none. */
    void settle() {
        settled = true;
        trying(() -> {
            if (file.isPresent()) {
                file.get().settle();
            }
        });
    }

    /** Puts the file in its place, if it has rows. */
    void put() {
        trying(() -> {
            if (file.isPresent() && !told.isEmpty()) {
                file.get().put();
            }
        });
    }

    @Override
    public void close() {
        trying(() -> {
            if (file.isPresent()) {
                file.get().close();
            }
        });
    }

    private interface Step {
        void take() throws IOException;
    }

    private void trying(Step step) {
        try {
            step.take();
        } catch (IOException failure) {
            throw new UncheckedIOException("--rejects: " + place.orElseThrow() + " could not be written", failure);
        }
    }
}
