package org.taperwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.RejectedRows;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TableRow;

/** Takes the rows that are not read: tells the first hundred, and writes all of them where it is told to. */
final class RejectsFile implements RowSink, AutoCloseable {
    private static final int MOST_TOLD = 100;

    private final Optional<Path> file;
    private final CsvFormat format;
    private final List<String> told = new ArrayList<>();
    private Optional<Path> part = Optional.empty();
    private Optional<Writer> out = Optional.empty();
    private Optional<RejectedRows> rows = Optional.empty();
    private boolean ended;

    RejectsFile(Optional<Path> file, CsvFormat format) {
        this.file = file;
        this.format = format;
    }

    @Override
    public void begin(String header) {
        if (ended || file.isEmpty()) {
            return;
        }
        try {
            Path folder = file.get().toAbsolutePath().getParent();
            part = Optional.of(
                    Files.createTempFile(folder, file.get().getFileName().toString(), ".part"));
            out = Optional.of(Files.newBufferedWriter(part.get(), StandardCharsets.UTF_8));
            rows = Optional.of(new RejectedRows(out.get(), format));
            rows.get().begin(header);
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot write " + file.get(), failure);
        }
    }

    @Override
    public void row(TableRow row) {
        if (ended || !(row instanceof TableRow.Bad bad)) {
            return;
        }
        if (told.size() < MOST_TOLD) {
            told.add(RejectedRows.sentence(bad));
        }
        try {
            if (rows.isPresent()) {
                rows.get().row(bad);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot write " + file, failure);
        }
    }

    /** The first of what is wrong, a row each. */
    List<String> told() {
        return List.copyOf(told);
    }

    /** Puts the file in its place, if it has rows; later readings of the same table go nowhere. */
    void end(boolean keep) {
        ended = true;
        try {
            if (out.isPresent()) {
                out.get().close();
            }
            if (keep && part.isPresent() && !told.isEmpty()) {
                Files.move(part.get(), file.orElseThrow(), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot write " + file, failure);
        }
    }

    @Override
    public void close() {
        try {
            if (out.isPresent()) {
                out.get().close();
            }
            if (part.isPresent()) {
                Files.deleteIfExists(part.get());
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot remove " + part, failure);
        }
    }
}
