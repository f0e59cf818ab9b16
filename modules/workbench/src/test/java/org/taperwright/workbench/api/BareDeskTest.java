package org.taperwright.workbench.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;

class BareDeskTest {
    private static final ThingId ID = new ThingId("first");
    private final BareDesk desk = new BareDesk(Map.of(ID, named("before")));

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void an_edit_changes_the_library_and_undo_puts_the_former_record_back() {
        desk.edit("Rename", List.of(new Change.Put(ID, named("after"))));
        assertThat(name()).isEqualTo("after");
        assertThat(desk.nextUndo()).contains("Rename");

        desk.undo();
        assertThat(name()).isEqualTo("before");
        assertThat(desk.nextRedo()).contains("Rename");

        desk.redo();
        assertThat(name()).isEqualTo("after");
    }

    @Test
    void removing_the_selected_thing_leaves_nothing_selected() {
        desk.select(ID);
        desk.edit("Remove", List.of(new Change.Remove(ID)));

        assertThat(desk.selected()).isEmpty();
        desk.undo();
        assertThat(desk.selected()).contains(ID);
    }

    @Test
    void a_newer_computation_supersedes_the_older_of_its_slot() throws InterruptedException {
        Object slot = new Object();
        List<Outcome<String>> delivered = new ArrayList<>();
        SwingUtilities.invokeLater(() -> {
            desk.compute(slot, "old", progress -> "old", delivered::add);
            desk.compute(slot, "new", progress -> "new", delivered::add);
        });
        desk.settle();

        assertThat(delivered).containsExactly(new Outcome.Current<>("new"));
    }

    @Test
    void a_computation_that_fails_is_delivered_with_its_reason() throws InterruptedException {
        List<Outcome<String>> delivered = new ArrayList<>();
        Work<String> failing = progress -> {
            throw new IllegalStateException("no such alloy");
        };
        SwingUtilities.invokeLater(() -> desk.compute(this, "fail", failing, delivered::add));
        desk.settle();

        assertThat(delivered).containsExactly(new Outcome.Failed<>("no such alloy"));
    }

    private String name() {
        return desk.snapshot().entry(ID).orElseThrow().name();
    }

    private static SavedComparison named(String name) {
        return new SavedComparison(name, List.of(), ID, "");
    }
}
