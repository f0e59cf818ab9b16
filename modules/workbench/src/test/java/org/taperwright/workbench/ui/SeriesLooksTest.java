package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

class SeriesLooksTest {
    @Test
    void designs_compared_with_each_other_never_look_alike() {
        SeriesLooks looks = SeriesLooks.of(library(Map.of(
                "first",
                List.of("a", "b", "c"),
                "second",
                List.of("d", "c", "a"),
                "third",
                List.of("e", "f", "d", "b"))));

        for (List<String> group :
                List.of(List.of("a", "b", "c"), List.of("d", "c", "a"), List.of("e", "f", "d", "b"))) {
            List<SeriesLook> shown =
                    group.stream().map(id -> looks.of(new ThingId(id))).toList();
            assertThat(new HashSet<>(shown)).hasSameSizeAs(group);
        }
    }

    @Test
    void the_first_comparison_takes_the_looks_in_its_order() {
        SeriesLooks looks = SeriesLooks.of(library(Map.of("first", List.of("c", "a", "b"))));

        assertThat(looks.of(new ThingId("c")).place()).isZero();
        assertThat(looks.of(new ThingId("a")).place()).isEqualTo(1);
        assertThat(looks.of(new ThingId("b")).place()).isEqualTo(2);
    }

    @Test
    void a_design_in_no_comparison_keeps_its_look_whatever_else_is_in_the_library() {
        SeriesLook alone = SeriesLooks.of(library(Map.of())).of(new ThingId("z"));
        SeriesLook among =
                SeriesLooks.of(library(Map.of("first", List.of("a", "b")))).of(new ThingId("z"));

        assertThat(among).isEqualTo(alone);
    }

    private static Snapshot library(Map<String, List<String>> comparisons) {
        Map<ThingId, Entry> entries = new HashMap<>();
        comparisons.forEach((id, designs) -> {
            List<ThingId> members = designs.stream().map(ThingId::new).toList();
            SavedComparison saved = new SavedComparison(id, members, members.get(0), "");
            entries.put(new ThingId(id), new Entry(new ThingId(id), saved, 1, Instant.EPOCH, "Open"));
        });
        return new Snapshot(1, entries);
    }
}
