package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.Examples;
import org.taperwright.library.TestLibrary;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;

class EditHistoryTest {
    private static final Instant NOON = Instant.parse("2031-05-06T12:00:00Z");
    private static final ThingId A = new ThingId("a");
    private static final ThingId B = new ThingId("b");

    @TempDir
    private Path folder;

    private EditHistory history;

    @BeforeEach
    void open() {
        history = new EditHistory(
                TestLibrary.open(folder.resolve("l.db")), "someone", Runnable::run, Clock.fixed(NOON, ZoneOffset.UTC));
    }

    @AfterEach
    void close() {
        history.close();
    }

    private static Change put(ThingId id, String name) {
        return new Change.Put(id, Examples.plainDesign(name));
    }

    private List<String> names() {
        return history.snapshot().entries().values().stream()
                .map(Entry::name)
                .sorted()
                .toList();
    }

    @Test
    void anEditShowsAtOnceAndBearsItsNameAndTime() {
        Snapshot snapshot = history.edit("Add a", List.of(put(A, "Alpha")));
        assertThat(snapshot).isSameAs(history.snapshot());
        assertThat(snapshot.entry(A)).contains(new Entry(A, Examples.plainDesign("Alpha"), 1, NOON, "Add a"));
    }

    @Test
    void everyEditIsUndoneAndRedoneByName() {
        history.edit("Add both", List.of(put(A, "Alpha"), put(B, "Beta")));
        history.edit("Rename a", List.of(put(A, "Omega")));
        history.edit("Take b out", List.of(new Change.Remove(B)));
        assertThat(history.nextUndo()).contains("Take b out");
        assertThat(history.nextRedo()).isEmpty();

        history.undo();
        assertThat(names()).containsExactly("Beta", "Omega");
        assertThat(history.nextRedo()).contains("Take b out");
        history.undo();
        assertThat(names()).containsExactly("Alpha", "Beta");
        history.undo();
        assertThat(names()).isEmpty();
        assertThat(history.nextUndo()).isEmpty();

        history.redo();
        history.redo();
        history.redo();
        assertThat(names()).containsExactly("Omega");
        assertThat(history.nextRedo()).isEmpty();
        assertThat(history.nextUndo()).contains("Take b out");
    }

    @Test
    void undoBringsBackTheVeryRecord() {
        history.edit("Add a", List.of(put(A, "Alpha")));
        Record before = history.snapshot().entry(A).orElseThrow().thing();
        history.edit("Rename a", List.of(put(A, "Omega")));
        history.undo();
        assertThat(history.snapshot().entry(A).orElseThrow().thing()).isSameAs(before);
    }

    @Test
    void aNewEditEndsWhatCouldBeRedone() {
        history.edit("Add a", List.of(put(A, "Alpha")));
        history.undo();
        history.edit("Add b", List.of(put(B, "Beta")));
        assertThat(history.nextRedo()).isEmpty();
        assertThat(history.redo()).isSameAs(history.snapshot());
        assertThat(names()).containsExactly("Beta");
    }

    @Test
    void undoAddsARevisionAndThePastOutlivesTheSession() {
        history.edit("Add a", List.of(put(A, "Alpha")));
        history.edit("Rename a", List.of(put(A, "Omega")));
        history.undo();
        history.close();
        open();
        assertThat(names()).containsExactly("Alpha");
        assertThat(history.nextUndo()).isEmpty();
        assertThat(history.pastOf(A)).extracting(Revision::edit).containsExactly("Add a", "Rename a", "Undo: Rename a");
        assertThat(history.pastOf(A).get(1).content()).isEqualTo(new Content.Present(Examples.plainDesign("Omega")));
    }

    @Test
    void anEditThatChangesNothingIsNoEdit() {
        history.edit("Add a", List.of(put(A, "Alpha")));
        Snapshot before = history.snapshot();
        history.edit("Again", List.of(put(A, "Alpha"), new Change.Remove(B)));
        assertThat(history.snapshot()).isSameAs(before);
        assertThat(history.nextUndo()).contains("Add a");
    }

    @Test
    void ofTwoChangesOfAThingInOneEditTheLastCounts() {
        history.edit("Add", List.of(put(A, "Alpha"), put(A, "Omega"), put(B, "Beta"), new Change.Remove(B)));
        assertThat(names()).containsExactly("Omega");
    }

    @Test
    void aThingThatCouldNotBeKeptIsRefusedBeforeAnythingChanges() {
        Design broken = new Design(
                "Broken",
                "",
                Double.NaN,
                Examples.design().taper(),
                OptionalDouble.empty(),
                25,
                Examples.design().sections(),
                Examples.design().flutes(),
                Examples.design().hand(),
                Examples.design().tip(),
                "stainless-steel",
                Examples.design().making(),
                Examples.design().motion());
        assertThat(history.faults(A, broken))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.sentence()).isEqualTo("tipDiameterMm: found NaN; expected a number, mm"));
        assertThatThrownBy(() -> history.edit("Add", List.of(put(B, "Beta"), new Change.Put(A, broken))))
                .hasMessage("tipDiameterMm: found NaN; expected a number, mm");
        assertThat(names()).isEmpty();
        assertThat(history.nextUndo()).isEmpty();
    }

    @Test
    void anEditWorkedOutFromAnOlderLibraryIsNotMade() {
        Snapshot base = history.edit("Add a", List.of(put(A, "Alpha")));
        history.edit("Rename a", List.of(put(A, "Omega")));
        assertThat(history.tryEditFrom(base, "Add b", List.of(put(B, "Beta")), Progress.NONE))
                .as("to be worked out anew")
                .isEmpty();
        assertThat(history.snapshot().entry(B)).isEmpty();
        assertThat(history.tryEditFrom(history.snapshot(), "Add b", List.of(put(B, "Beta")), Progress.NONE))
                .contains(List.of());
        assertThat(history.snapshot().entry(B)).isPresent();
        assertThat(history.tryEditFrom(base, "Change", List.of(new Change.Put(A, Examples.motor())), Progress.NONE))
                .hasValueSatisfying(faults -> assertThat(faults)
                        .extracting(fault -> fault.sentence())
                        .containsExactly("id: a is that of a design; expected that of a motor"));
    }

    @Test
    void aThingCannotBecomeOneOfAnotherKind() {
        history.edit("Add a", List.of(put(A, "Alpha")));
        assertThatThrownBy(() -> history.edit("Change", List.of(new Change.Put(A, Examples.motor()))))
                .hasMessage("id: a is that of a design; expected that of a motor");
        assertThat(history.nextUndo()).contains("Add a");
    }

    @Test
    void listenersAreToldUntilTheyAreClosed() {
        List<Snapshot> told = new ArrayList<>();
        try (Listening listening = history.onChange(told::add)) {
            history.edit("Add a", List.of(put(A, "Alpha")));
            history.undo();
            assertThat(listening).isNotNull();
        }
        history.redo();
        assertThat(told).hasSize(2);
        assertThat(told.get(0).entries()).containsOnlyKeys(A);
        assertThat(told.get(1).entries()).isEmpty();
    }

    @Test
    void aListenerMayEdit() {
        try (Listening listening = history.onChange(snapshot -> {
            if (snapshot.entry(B).isEmpty()) {
                history.edit("Add b", List.of(put(B, "Beta")));
            }
        })) {
            history.edit("Add a", List.of(put(A, "Alpha")));
            assertThat(listening).isNotNull();
        }
        assertThat(names()).containsExactly("Alpha", "Beta");
    }

    @Test
    void editsFromManyThreadsAreAllKeptInOrder() throws InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        ExecutorService storing = Executors.newSingleThreadExecutor();
        history.close();
        history = new EditHistory(TestLibrary.open(folder.resolve("m.db")), "someone", storing, Clock.systemUTC());
        for (int thread = 0; thread < 4; thread++) {
            ThingId id = new ThingId("t" + thread);
            threads.execute(() -> {
                for (int i = 0; i < 25; i++) {
                    history.edit("Edit " + i, List.of(put(id, "Name " + i)));
                }
            });
        }
        threads.shutdown();
        assertThat(threads.awaitTermination(30, TimeUnit.SECONDS)).isTrue();
        assertThat(history.snapshot().revision()).isEqualTo(100);
        assertThat(history.flush(Duration.ofSeconds(30))).isTrue();
        for (int thread = 0; thread < 4; thread++) {
            assertThat(history.pastOf(new ThingId("t" + thread)))
                    .extracting(Revision::edit)
                    .containsExactlyElementsOf(java.util.stream.IntStream.range(0, 25)
                            .mapToObj(i -> "Edit " + i)
                            .toList());
        }
        history.close();
        storing.shutdown();
        open();
    }
}
