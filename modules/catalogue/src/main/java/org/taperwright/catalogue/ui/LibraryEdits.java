package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.Desk;

/** Edits that any kind of thing allows: rename, duplicate, remove. Each is one named edit on the desk. */
final class LibraryEdits {
    private final Desk desk;

    LibraryEdits(Desk desk) {
        this.desk = desk;
    }

    /** Renames a thing; a blank or unchanged name does nothing. */
    void rename(ThingId id, String name) {
        String trimmed = name.strip();
        desk.snapshot()
                .entry(id)
                .filter(entry -> !trimmed.isEmpty() && !trimmed.equals(entry.name()))
                .ifPresent(entry -> desk.edit(
                        "Rename " + entry.name() + " to " + trimmed,
                        List.of(new Change.Put(id, Renamed.of(entry.thing(), trimmed)))));
    }

    /** Duplicates things and selects the last copy. */
    void duplicate(List<ThingId> ids) {
        List<Entry> entries = entries(ids);
        if (entries.isEmpty()) {
            return;
        }
        Set<String> taken = names(desk.snapshot());
        List<Change> changes = new ArrayList<>();
        for (Entry entry : entries) {
            String name = freeName(entry.name(), taken);
            taken.add(name);
            changes.add(new Change.Put(ThingId.fresh(), Renamed.of(entry.thing(), name)));
        }
        if (desk.edit("Duplicate " + described(entries), changes)) {
            desk.select(changes.get(changes.size() - 1).id());
        }
    }

    /** Takes things out of the library. */
    void remove(List<ThingId> ids) {
        List<Entry> entries = entries(ids);
        if (entries.isEmpty()) {
            return;
        }
        List<Change> changes = new ArrayList<>();
        entries.forEach(entry -> changes.add(new Change.Remove(entry.id())));
        desk.edit("Remove " + described(entries), changes);
    }

    private List<Entry> entries(List<ThingId> ids) {
        return ids.stream()
                .map(id -> desk.snapshot().entry(id))
                .flatMap(Optional::stream)
                .toList();
    }

    private static String described(List<Entry> entries) {
        if (entries.size() == 1) {
            return entries.get(0).name();
        }
        Set<String> headings = new HashSet<>();
        entries.forEach(entry -> headings.add(entry.kind().heading().toLowerCase(Locale.ROOT)));
        return entries.size() + " "
                + (headings.size() == 1 ? headings.iterator().next() : "things");
    }

    private static Set<String> names(Snapshot snapshot) {
        Set<String> names = new HashSet<>();
        snapshot.entries().values().forEach(entry -> names.add(entry.name()));
        return names;
    }

    private static String freeName(String name, Set<String> taken) {
        String candidate = name + ", copy";
        for (int number = 2; taken.contains(candidate); number++) {
            candidate = name + ", copy " + number;
        }
        return candidate;
    }
}
