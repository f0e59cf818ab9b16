package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.mechanics.design.ThingId;

class PastTest {
    private static final Instant NOON = Instant.parse("2031-05-06T12:00:00Z");
    private static final ThingId A = new ThingId("a");

    @TempDir
    private Path folder;

    private EditHistory history;

    @BeforeEach
    void open() {
        history = new EditHistory(
                TestLibrary.open(folder.resolve("l.db")), "Ada", Runnable::run, Clock.fixed(NOON, ZoneOffset.UTC));
        put("Add a", Examples.plainDesign("Alpha"));
        put("Rename a", Examples.plainDesign("Omega"));
    }

    @AfterEach
    void close() {
        history.close();
    }

    private void put(String edit, Record thing) {
        history.edit(edit, List.of(new Change.Put(A, thing)));
    }

    private Revision step(int index) {
        return history.past(A).get(index).revision();
    }

    private String name() {
        return history.snapshot().entry(A).map(Entry::name).orElse("nothing");
    }

    @Test
    void everyStepSaysWhoMadeItWhenByWhichEditAndWhatItChanged() {
        PastRevision second = history.past(A).get(1);
        assertThat(second.revision().who()).isEqualTo("Ada");
        assertThat(second.revision().at()).isEqualTo(NOON);
        assertThat(second.revision().edit()).isEqualTo("Rename a");
        assertThat(second.changes()).extracting(FieldChange::sentence).containsExactly("name: Alpha \u2192 Omega");
        assertThat(history.past(A).get(0).changes()).isEmpty();
    }

    @Test
    void anyTwoStepsAreCompared() {
        put("Make it another", Examples.design());
        assertThat(PastRevision.between(step(0), step(2)))
                .extracting(FieldChange::field)
                .contains("name", "taper[0].taper", "sections[1].shape.family")
                .doesNotContain("hand", "id", "form");
        assertThat(PastRevision.between(step(2), step(2))).isEmpty();
    }

    @Test
    void aStepBroughtBackIsANewEditThatCanBeUndone() {
        assertThat(history.bringBack(step(0))).isEmpty();
        assertThat(name()).isEqualTo("Alpha");
        assertThat(history.nextUndo()).contains("Bring back Alpha as of revision 1");
        assertThat(history.past(A)).hasSize(3);
        history.undo();
        assertThat(name()).isEqualTo("Omega");
    }

    @Test
    void aThingTakenOutIsBroughtBackAndItsAbsenceToo() {
        history.edit("Take a out", List.of(new Change.Remove(A)));
        Revision out = step(2);
        history.bringBack(step(1));
        assertThat(name()).isEqualTo("Omega");
        assertThat(history.bringBack(out)).isEmpty();
        assertThat(name()).isEqualTo("nothing");
        assertThat(history.nextUndo()).contains("Bring back Omega as of revision 3");
    }

    @Test
    void aThingOfAnotherKindIsNotOverwritten() {
        Revision design = step(0);
        history.edit("Take a out", List.of(new Change.Remove(A)));
        put("A motor now", Examples.motor());
        assertThat(history.bringBack(design))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.sentence()).isEqualTo("id: a is that of a motor; expected that of a design"));
        assertThat(name()).isEqualTo("Tern bench motor");
    }
}
