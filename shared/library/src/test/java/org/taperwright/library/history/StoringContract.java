package org.taperwright.library.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestDatabase;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.StoreFailure;
import org.taperwright.mechanics.design.ThingId;

/** How edits reach the store, whatever database it is on. */
abstract class StoringContract {
    private static final ThingId A = new ThingId("a");
    private static final ThingId B = new ThingId("b");

    private TestDatabase database;

    /** A place for a new library. */
    abstract TestDatabase database();

    /** Makes every write to the library fail, as a full disk would, until undone. */
    abstract void breakStore(TestDatabase at, boolean broken);

    @BeforeEach
    void choose() {
        database = database();
    }

    private EditHistory open() {
        return new EditHistory(database.open(), "someone", Runnable::run, Clock.systemUTC());
    }

    private void breakStore(boolean broken) {
        breakStore(database, broken);
    }

    private static List<Change> put(ThingId id, String name) {
        return List.of(new Change.Put(id, Examples.plainDesign(name)));
    }

    private static String name(EditHistory history, ThingId id) {
        return history.snapshot().entry(id).map(Entry::name).orElse("nothing");
    }

    @Test
    void aFailureIsToldAndTheEditsAreKeptAndStoredLater() {
        List<StoringEvent> events = new ArrayList<>();
        try (EditHistory history = open()) {
            Listening listening = history.onStoring(events::add);
            breakStore(true);
            history.edit("Add a", put(A, "Alpha"));
            history.edit("Add b", put(B, "Beta"));
            assertThat(events).singleElement().isInstanceOfSatisfying(StoringEvent.Failed.class, failed -> {
                assertThat(failed.reason()).contains("broken");
                assertThat(failed.waiting()).isEqualTo(1);
            });
            assertThat(history.flush(Duration.ofSeconds(5))).isFalse();
            assertThat(name(history, B)).isEqualTo("Beta");
            breakStore(false);
            assertThat(history.flush(Duration.ofSeconds(5))).isTrue();
            assertThat(events).endsWith(new StoringEvent.Stored("Add a", 1), new StoringEvent.Stored("Add b", 0));
            listening.close();
        }
        try (EditHistory again = open()) {
            assertThat(again.snapshot().entries()).containsOnlyKeys(A, B);
        }
    }

    @Test
    void aFailureIsTriedAgainWithoutBeingAsked() throws Exception {
        try (EditHistory history = open()) {
            breakStore(true);
            history.edit("Add a", put(A, "Alpha"));
            breakStore(false);
            java.util.concurrent.CountDownLatch stored = new java.util.concurrent.CountDownLatch(1);
            try (Listening listening = history.onStoring(event -> stored.countDown())) {
                assertThat(listening).isNotNull();
                assertThat(stored.await(20, java.util.concurrent.TimeUnit.SECONDS))
                        .isTrue();
            }
            assertThat(history.pastOf(A)).hasSize(1);
        }
    }

    @Test
    void closingNamesTheEditsThatCouldNotBeStored() {
        EditHistory history = open();
        breakStore(true);
        history.edit("Add a", put(A, "Alpha"));
        assertThatThrownBy(history::close).isInstanceOf(StoreFailure.class).hasMessage("not stored: Add a");
        breakStore(false);
    }

    @Test
    void theLaterOfTwoProgramsIsToldAndMayLetItsOwnStand() {
        List<StoringEvent> events = new ArrayList<>();
        try (EditHistory first = open();
                EditHistory second = open()) {
            Listening listening = second.onStoring(events::add);
            first.edit("Add a", put(A, "Theirs"));
            second.edit("Add a too", put(A, "Mine"));
            second.edit("Add b", put(B, "Beta"));
            assertThat(events).singleElement().isInstanceOfSatisfying(StoringEvent.Conflicting.class, conflict -> {
                assertThat(conflict.edit()).isEqualTo("Add a too");
                assertThat(conflict.clashes().get(0).theirs().edit()).isEqualTo("Add a");
                assertThat(conflict.clashes().get(0).mine().thing()).contains(Examples.plainDesign("Mine"));
            });
            second.resolve(Choice.MINE);
            assertThat(name(second, A)).isEqualTo("Mine");
            assertThat(second.pastOf(A)).extracting(Revision::edit).containsExactly("Add a", "Add a too");
            assertThat(second.pastOf(B)).hasSize(1);
            listening.close();
        }
    }

    @Test
    void theLaterOfTwoProgramsMayTakeTheOthers() {
        try (EditHistory first = open();
                EditHistory second = open()) {
            first.edit("Add a", put(A, "Theirs"));
            second.edit(
                    "Add both", List.of(put(A, "Mine").get(0), put(B, "Beta").get(0)));
            second.resolve(Choice.THEIRS);
            assertThat(name(second, A)).isEqualTo("Theirs");
            assertThat(name(second, B)).isEqualTo("Beta");
            assertThat(second.pastOf(A)).hasSize(1);
            assertThat(second.pastOf(B)).hasSize(1);
            second.undo();
            assertThat(name(second, A)).as("undo leaves what others made").isEqualTo("Theirs");
            assertThat(name(second, B)).isEqualTo("nothing");
        }
    }

    @Test
    void closingInConflictKeepsBothVersionsInThePast() {
        try (EditHistory first = open()) {
            EditHistory second = open();
            first.edit("Add a", put(A, "Theirs"));
            second.edit("Add a too", put(A, "Mine"));
            second.close();
            assertThat(first.pastOf(A)).extracting(Revision::edit).containsExactly("Add a", "Add a too");
        }
    }

    @Test
    void whatOthersChangedIsTakenInOnAsking() {
        try (EditHistory first = open();
                EditHistory second = open()) {
            second.edit("Add b", put(B, "Beta"));
            first.edit("Add a", put(A, "Alpha"));
            first.edit("Rename a", put(A, "Omega"));
            List<Object> told = new ArrayList<>();
            Listening listening = second.onChange(told::add);
            second.refresh();
            assertThat(name(second, A)).isEqualTo("Omega");
            assertThat(second.nextUndo()).contains("Add b");
            second.edit("Rename a again", put(A, "Psi"));
            first.refresh();
            assertThat(name(first, A)).isEqualTo("Psi");
            assertThat(name(first, B)).isEqualTo("Beta");
            assertThat(first.nextUndo()).as("others changed it since").isEmpty();
            second.refresh();
            assertThat(told).as("nothing new, nothing told").hasSize(2);
            listening.close();
        }
    }
}
