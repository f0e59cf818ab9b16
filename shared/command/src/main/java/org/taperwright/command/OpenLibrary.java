package org.taperwright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.command.input.BadInput;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.AppendResult;
import org.taperwright.library.store.Contents;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;

/** A library's file while a command works on it. One that is not there yet is made when something is stored in it. */
final class OpenLibrary implements AutoCloseable {
    private final Path file;
    private final Contents contents;
    private Optional<LibraryStore> store;

    private OpenLibrary(Path file, Optional<LibraryStore> store) {
        this.file = file;
        this.store = store;
        this.contents = store.map(LibraryStore::contents)
                .orElseGet(() -> new Contents(new Snapshot(0, Map.of()), Map.of(), List.of()));
    }

    /** Opens a library that is there. */
    static OpenLibrary existing(Path file) {
        if (!Files.isRegularFile(file)) {
            throw BadInput.of(file + ": is no file", "expected the file of a library");
        }
        return new OpenLibrary(file, Optional.of(open(file)));
    }

    /** Opens a library, or begins one where there is none. */
    static OpenLibrary orNew(Path file) {
        return new OpenLibrary(file, Files.exists(file) ? Optional.of(open(file)) : Optional.empty());
    }

    private static LibraryStore open(Path file) {
        OpenResult result = LibraryStore.open(file, JsonForms.forStore());
        if (result instanceof OpenResult.Opened opened) {
            return opened.store();
        }
        throw new BadInput(List.of(((OpenResult.Refused) result).fault().sentence()));
    }

    /** What it held when it was opened. */
    Snapshot snapshot() {
        return contents.snapshot();
    }

    /** Stores the changes as one edit, all or nothing. */
    void store(String edit, List<Change> changes) {
        List<Draft> drafts = changes.stream()
                .map(Change.Put.class::cast)
                .map(put -> new Draft(
                        put.id(),
                        ThingKind.of(put.thing()),
                        Optional.of(put.thing()),
                        contents.heads().getOrDefault(put.id(), 0L)))
                .toList();
        if (store.isEmpty()) {
            store = Optional.of(open(file));
        }
        AppendResult result = store.get().append(edit, System.getProperty("user.name", ""), Instant.now(), drafts);
        if (result instanceof AppendResult.Conflicting conflicting) {
            throw BadInput.of(
                    "another program changed "
                            + Counted.of(conflicting.clashes().size(), "thing")
                            + " of these meanwhile; nothing was stored",
                    "expected the library as it was looked at: try again");
        }
    }

    @Override
    public void close() {
        store.ifPresent(LibraryStore::close);
    }
}
