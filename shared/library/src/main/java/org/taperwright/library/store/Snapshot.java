package org.taperwright.library.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/** An immutable view of everything in the library at one revision. */
public record Snapshot(long revision, Map<ThingId, Entry> entries) {
    public Snapshot {
        entries = Map.copyOf(entries);
    }

    /** The entry of an identifier. */
    public Optional<Entry> entry(ThingId id) {
        return Optional.ofNullable(entries.get(id));
    }

    /** The thing of an identifier, if it is of that type. */
    public <T extends Record> Optional<T> thing(ThingId id, Class<T> type) {
        return entry(id).map(Entry::thing).filter(type::isInstance).map(type::cast);
    }

    /** Entries of a kind, by name. */
    public List<Entry> ofKind(ThingKind kind) {
        return entries.values().stream()
                .filter(entry -> entry.kind() == kind)
                .sorted(java.util.Comparator.comparing(Entry::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(Entry::id))
                .toList();
    }
}
