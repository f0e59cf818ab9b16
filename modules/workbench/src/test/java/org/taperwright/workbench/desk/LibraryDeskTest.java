package org.taperwright.workbench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.workbench.api.NamedEdit;
import org.taperwright.workbench.api.RefusedEdit;
import org.taperwright.workbench.api.Subscription;

class LibraryDeskTest {
    @TempDir
    private Path folder;

    private DeskOnDisk onDisk;
    private LibraryDesk desk;

    @BeforeEach
    void open() {
        onDisk = new DeskOnDisk(folder);
        desk = onDisk.desk();
        desk.edit("New motor", DeskOnDisk.naming("First"));
    }

    @AfterEach
    void close() {
        onDisk.close();
    }

    @Test
    void anEditShowsInTheSnapshotAtOnce() {
        desk.edit("Rename", DeskOnDisk.naming("Second"));
        assertThat(name(desk.snapshot())).isEqualTo("Second");
    }

    @Test
    void anEditThatCannotBeMadeIsSaidWhyAndChangesNothing() {
        List<Change> nameless = DeskOnDisk.naming("");
        assertThat(desk.tryEdit("Rename", nameless))
                .singleElement()
                .satisfies(fault -> assertThat(fault.where()).isEqualTo("name"));
        assertThat(name(desk.snapshot())).isEqualTo("First");
        assertThat(desk.tryEdit("Rename", DeskOnDisk.naming("Second"))).isEmpty();
        assertThat(name(desk.snapshot())).isEqualTo("Second");
    }

    @Test
    void anEditThatCannotBeMadeIsToldToThoseWhoListenAndThrowsNothing() {
        List<RefusedEdit> refused = new ArrayList<>();
        desk.onRefusal(refused::add);

        assertThat(desk.edit("Rename", DeskOnDisk.naming(""))).isFalse();
        assertThat(desk.edit("Rename to Second", DeskOnDisk.naming("Second"))).isTrue();

        assertThat(refused).singleElement().satisfies(each -> {
            assertThat(each.name()).isEqualTo("Rename");
            assertThat(each.sentence())
                    .startsWith("“Rename” was not done: name ")
                    .endsWith("Nothing was changed.");
        });
        assertThat(name(desk.snapshot())).isEqualTo("Second");
    }

    @Test
    void anEditOfManyIsWorkedOutAnewWhenTheLibraryChangesMeanwhile() {
        List<Outcome<List<Fault>>> told = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        desk.editMany(
                this,
                "Note of all",
                (library, progress) -> {
                    seen.add(name(library));
                    if (seen.size() == 1) {
                        desk.edit("Rename meanwhile", DeskOnDisk.naming("Second"));
                    }
                    return new NamedEdit("Name longer", DeskOnDisk.naming(name(library) + ", longer"));
                },
                told::add);

        assertThat(seen).containsExactly("First", "Second");
        assertThat(told).containsExactly(new Outcome.Current<>(List.of()));
        assertThat(name(desk.snapshot())).isEqualTo("Second, longer");
    }

    @Test
    void undoAndRedoWalkByName() {
        desk.edit("Rename to Second", DeskOnDisk.naming("Second"));
        assertThat(desk.nextUndo()).contains("Rename to Second");
        desk.undo();
        assertThat(name(desk.snapshot())).isEqualTo("First");
        assertThat(desk.nextRedo()).contains("Rename to Second");
        desk.redo();
        assertThat(name(desk.snapshot())).isEqualTo("Second");
    }

    @Test
    void listenersHearOfEditsUndoAndRedoUntilTheyClose() {
        List<String> heard = new ArrayList<>();
        Subscription subscription = desk.onChange(snapshot -> heard.add(name(snapshot)));
        desk.edit("Rename", DeskOnDisk.naming("Second"));
        desk.undo();
        desk.redo();
        subscription.close();
        desk.undo();
        assertThat(heard).containsExactly("Second", "First", "Second");
    }

    @Test
    void aListenerThatEditsLeavesNobodyWithAnOldSnapshot() {
        List<String> heard = new ArrayList<>();
        desk.onChange(snapshot -> {
            if (name(snapshot).equals("Second")) {
                desk.edit("Answer", DeskOnDisk.naming("Third"));
            }
        });
        desk.onChange(snapshot -> heard.add(name(snapshot)));
        desk.edit("Rename", DeskOnDisk.naming("Second"));
        assertThat(heard).isNotEmpty().containsOnly("Third");
    }

    @Test
    void aSelectionIsRememberedByKindAndForgottenWithItsThing() {
        desk.select(DeskOnDisk.MOTOR);
        assertThat(desk.selected()).contains(DeskOnDisk.MOTOR);
        assertThat(desk.selected(ThingKind.MOTOR)).contains(DeskOnDisk.MOTOR);
        assertThat(desk.selected(ThingKind.DESIGN)).isEmpty();
        desk.edit("Take out", List.of(new Change.Remove(DeskOnDisk.MOTOR)));
        assertThat(desk.selected()).isEmpty();
        assertThat(desk.selected(ThingKind.MOTOR)).isEmpty();
    }

    @Test
    void whatIsNotInTheLibraryCannotBeSelected() {
        List<ThingId> heard = new ArrayList<>();
        desk.onSelect(heard::add);
        desk.select(new ThingId("nowhere"));
        assertThat(heard).isEmpty();
        assertThat(desk.selected()).isEmpty();
    }

    @Test
    void openingSelectsAndBringsTheWindowToTheFront() {
        desk.open(DeskOnDisk.MOTOR);
        assertThat(desk.selected()).contains(DeskOnDisk.MOTOR);
        assertThat(onDisk.opened()).containsExactly(DeskOnDisk.MOTOR);
    }

    @Test
    void editsAreStillThereWhenTheLibraryIsOpenedAgain() {
        desk.edit("Rename", DeskOnDisk.naming("Kept"));
        onDisk.close();
        onDisk = new DeskOnDisk(folder);
        assertThat(name(onDisk.desk().snapshot())).isEqualTo("Kept");
    }

    private static String name(Snapshot snapshot) {
        return snapshot.thing(DeskOnDisk.MOTOR, Motor.class).orElseThrow().name();
    }
}
