package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.mechanics.design.ThingId;

class SnapshotTest {
    private static final ThingId A = new ThingId("a");
    private static final ThingId B = new ThingId("b");
    private static final ThingId C = new ThingId("c");

    private static Entry entry(ThingId id, String name, long revision) {
        return new Entry(id, Examples.plainDesign(name), revision, Instant.EPOCH, "Add");
    }

    private static Snapshot of(Entry... entries) {
        Map<ThingId, Entry> map = new HashMap<>();
        for (Entry entry : entries) {
            map.put(entry.id(), entry);
        }
        return new Snapshot(entries.length, map);
    }

    @Test
    void aKindIsListedByNameWhateverTheCase() {
        Snapshot snapshot = of(entry(A, "pike", 1), entry(B, "Heron", 2), entry(C, "heron", 3));
        assertThat(snapshot.ofKind(ThingKind.DESIGN)).extracting(Entry::id).containsExactly(B, C, A);
        assertThat(snapshot.ofKind(ThingKind.MOTOR)).isEmpty();
    }

    @Test
    void aRenamedThingMovesInItsList() {
        Snapshot before = of(entry(A, "Alpha", 1), entry(B, "Beta", 2));
        Snapshot after = before.with(3, List.of(entry(A, "Omega", 3)), List.of());
        assertThat(after.ofKind(ThingKind.DESIGN)).extracting(Entry::name).containsExactly("Beta", "Omega");
        assertThat(before.ofKind(ThingKind.DESIGN)).extracting(Entry::name).containsExactly("Alpha", "Beta");
        assertThat(after).isEqualTo(new Snapshot(3, Map.of(A, entry(A, "Omega", 3), B, entry(B, "Beta", 2))));
    }

    @Test
    void whatDiffersFromAnOlderViewIsTold() {
        Snapshot before = of(entry(A, "Alpha", 1), entry(B, "Beta", 2));
        Snapshot after = before.with(5, List.of(entry(B, "Bravo", 4), entry(C, "Charlie", 5)), List.of(A));
        SnapshotDifference difference = after.since(before);
        assertThat(difference.added()).containsExactly(entry(C, "Charlie", 5));
        assertThat(difference.removed()).containsExactly(entry(A, "Alpha", 1));
        assertThat(difference.changed())
                .containsExactly(new SnapshotDifference.Changed(entry(B, "Beta", 2), entry(B, "Bravo", 4)));
        assertThat(after.since(after).empty()).isTrue();
    }
}
