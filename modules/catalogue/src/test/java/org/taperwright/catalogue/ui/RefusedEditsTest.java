package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.catalogue.ui.motor.MotorsPanel;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.api.RefusedEdit;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Shots;

/** In a library that one may only look at, every edit of the catalogue's windows says that it was not made. */
class RefusedEditsTest {
    private static final Fault READER =
            Fault.impossible("library", "may only be looked at by you", "expected its owner to let you edit it");
    private final List<String> told = new ArrayList<>();
    private BareDesk desk;
    private Snapshot before;

    @BeforeEach
    void open() {
        Shots.theme(false);
        Map<ThingId, Record> things = new LinkedHashMap<>(SampleLibrary.things());
        things.put(new ThingId("twin"), SampleLibrary.hand(25));
        desk = Shots.onEventThread(() -> new BareDesk(things));
        desk.lock(READER);
        desk.onRefusal(refused -> told.add(refused.name()));
        before = desk.snapshot();
    }

    @AfterEach
    void nothing_changed() {
        assertThat(desk.snapshot()).isSameAs(before);
        desk.close();
    }

    @Test
    void renaming_duplicating_and_removing_are_told() throws InterruptedException {
        LibraryEdits edits = new LibraryEdits(desk);
        Panels.perform(desk, () -> edits.rename(SampleLibrary.HAND_8, "Another name"));
        Panels.perform(desk, () -> edits.duplicate(List.of(SampleLibrary.HAND_8)));
        Panels.perform(desk, () -> edits.remove(List.of(SampleLibrary.HAND_8)));

        assertThat(told)
                .containsExactly(
                        "Rename K-type file 8 to Another name", "Duplicate K-type file 8", "Remove K-type file 8");
    }

    @Test
    void quick_entry_and_a_saved_filter_are_told() throws InterruptedException {
        InstrumentsPanel panel = instruments();
        Panels.perform(desk, () -> ((JTextField) Panels.find(panel, "entry.sizes")).setText("30"));
        press(panel, "entry.add");
        Panels.perform(desk, () -> ((SavedFilterButton) Panels.find(panel, "filter.saved")).keep("Mine"));

        assertThat(told).containsExactly("Add K-type file 30/.02", "Save filter Mine");
    }

    @Test
    void many_changed_at_once_are_told_beneath_the_button() throws InterruptedException {
        InstrumentsPanel panel = instruments();
        Panels.perform(desk, () -> ((javax.swing.JTable) Panels.find(panel, "instruments.table")).selectAll());
        Panels.perform(desk, () -> ((JTextField) Panels.find(panel, "many.lot")).setText("b-7"));
        press(panel, "many.change");

        assertThat(((Prose) Panels.find(panel, "many.outcome")).getText()).contains("may only be looked at by you");
        assertThat(((JTextField) Panels.find(panel, "many.lot")).getText())
                .as("what was typed stays")
                .isEqualTo("b-7");
    }

    @Test
    void merging_is_told_over_the_groups() throws InterruptedException {
        DuplicatesPanel panel = Shots.onEventThread(() -> new DuplicatesPanel(desk));
        desk.settle();
        press(panel, "duplicates.merge");

        assertThat(((Prose) Panels.find(panel, "duplicates.told")).getText()).contains("may only be looked at by you");
    }

    @Test
    void a_new_motor_is_told() throws InterruptedException {
        MotorsPanel panel = Shots.onEventThread(() -> new MotorsPanel(desk));
        press(panel, "motor.new");

        assertThat(told).containsExactly("Add Motor 1");
    }

    @Test
    void what_is_told_names_the_edit_and_the_reason() {
        assertThat(new RefusedEdit("Add Motor 1", List.of(READER)).sentence())
                .isEqualTo(
                        "“Add Motor 1” was not done: library may only be looked at by you; expected its owner to let you "
                                + "edit it. Nothing was changed.");
    }

    private InstrumentsPanel instruments() throws InterruptedException {
        InstrumentsPanel panel = Shots.onEventThread(() -> {
            InstrumentsPanel made = new InstrumentsPanel(desk, new MemorySettings());
            made.attach();
            return made;
        });
        desk.settle();
        return panel;
    }

    private void press(JComponent in, String button) throws InterruptedException {
        Panels.perform(desk, () -> ((AbstractButton) Panels.find(in, button)).doClick());
    }
}
