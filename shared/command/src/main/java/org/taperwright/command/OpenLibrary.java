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

/** A library's file while a command works on it. */
final class OpenLibrary implements AutoCloseable {
    private final Optional<LibraryStore> store;
    private final Contents contents;

    private OpenLibrary(Optional<LibraryStore> store, Contents contents) {
        this.store = store;
        this.contents = contents;
    }

    /** An empty library that is stored nowhere, to plan with. */
    static OpenLibrary nowhere() {
        return new OpenLibrary(Optional.empty(), new Contents(new Snapshot(0, Map.of()), Map.of(), List.of()));
    }

    /** Opens a library that is there. */
    static OpenLibrary existing(Path file) {
        if (!Files.isRegularFile(file)) {
            throw BadInput.of(file + ": is no file", "expected the file of a library");
        }
        return orNew(file);
    }

    /** Opens a library, or makes one where there is none. */
    static OpenLibrary orNew(Path file) {
        OpenResult result = LibraryStore.open(file, JsonForms.forStore());
        if (result instanceof OpenResult.Opened opened) {
            return new OpenLibrary(Optional.of(opened.store()), opened.store().contents());
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
        AppendResult result =
                store.orElseThrow().append(edit, System.getProperty("user.name", ""), Instant.now(), drafts);
        if (result instanceof AppendResult.Conflicting conflicting) {
            throw BadInput.of(
                    "another program changed " + conflicting.clashes().size() + " of the things meanwhile",
                    "nothing was stored: try again");
        }
    }

    @Override
    public void close() {
        store.ifPresent(LibraryStore::close);
    }
}
