package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;

class UndoWalkProperties {
    /** Each number is an edit of one of four things: put under one of three names, or taken out. */
    @Property(tries = 25)
    void undoingAllAndRedoingAllPassesEveryStateAgain(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 0, max = 15) Integer> edits) throws IOException {
        Path folder = Files.createTempDirectory("walk");
        Path file = folder.resolve("l.db");
        List<Map<ThingId, Record>> states = new ArrayList<>();
        EditHistory history = new EditHistory(TestLibrary.open(file), "someone", Runnable::run, Clock.systemUTC());
        states.add(things(history.snapshot()));
        for (int edit : edits) {
            Snapshot before = history.snapshot();
            ThingId id = new ThingId("thing-" + edit / 4);
            Change change = edit % 4 == 3
                    ? new Change.Remove(id)
                    : new Change.Put(id, Examples.plainDesign("Name " + edit % 4));
            if (history.edit("Edit " + edit, List.of(change)) != before) {
                states.add(things(history.snapshot()));
            }
        }
        for (int i = states.size() - 2; i >= 0; i--) {
            assertThat(things(history.undo())).isEqualTo(states.get(i));
        }
        assertThat(history.nextUndo()).isEmpty();
        for (int i = 1; i < states.size(); i++) {
            assertThat(things(history.redo())).isEqualTo(states.get(i));
        }
        assertThat(history.nextRedo()).isEmpty();
        Snapshot last = history.snapshot();
        history.close();
        try (EditHistory again = new EditHistory(TestLibrary.open(file), "someone", Runnable::run, Clock.systemUTC())) {
            assertThat(again.snapshot().entries()).isEqualTo(last.entries());
            assertThat(again.snapshot().revision()).isEqualTo(last.revision());
        }
        Files.delete(file);
        Files.delete(folder);
    }

    private static Map<ThingId, Record> things(Snapshot snapshot) {
        Map<ThingId, Record> things = new HashMap<>();
        snapshot.entries().forEach((id, entry) -> things.put(id, entry.thing()));
        return things;
    }
}
