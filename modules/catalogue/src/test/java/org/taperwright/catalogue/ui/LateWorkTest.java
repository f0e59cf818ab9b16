package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.MemorySettings;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Shots;

/** What is asked while work is still going on: the last word stands, and nothing edited meanwhile is taken back. */
class LateWorkTest {
    private static final ThingId TWIN_8 = new ThingId("twin-8");
    private static final ThingId TWIN_25 = new ThingId("twin-25");
    private BareDesk desk;

    @BeforeEach
    void open() {
        Shots.theme(false);
        Map<ThingId, Record> things = new LinkedHashMap<>(SampleLibrary.things());
        things.put(TWIN_8, SampleLibrary.hand(8));
        things.put(TWIN_25, SampleLibrary.hand(25));
        desk = Shots.onEventThread(() -> new BareDesk(things));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void the_group_selected_last_is_listed_when_an_older_listing_comes_late() throws InterruptedException {
        DuplicatesPanel panel = Shots.onEventThread(() -> new DuplicatesPanel(desk));
        desk.settle();
        JTable groups = (JTable) Panels.find(panel, "duplicates.groups");
        whileBusy(() -> {
            groups.setRowSelectionInterval(1, 1);
            groups.setRowSelectionInterval(0, 0);
            groups.setRowSelectionInterval(1, 1);
            assertThat(Panels.find(panel, "duplicates.merge").isEnabled())
                    .as("nothing is merged before its entries are seen")
                    .isFalse();
        });

        assertThat(column(panel, "duplicates.entries", 0)).containsOnly((String) groups.getValueAt(1, 2));
    }

    @Test
    void a_group_whose_entry_is_taken_out_while_it_is_looked_for_does_not_come_back() throws InterruptedException {
        DuplicatesPanel panel = Shots.onEventThread(() -> {
            DuplicatesPanel made = new DuplicatesPanel(desk);
            made.addNotify();
            return made;
        });
        whileBusy(() -> desk.edit("Remove a twin", List.of(new Change.Remove(TWIN_8))));

        assertThat(column(panel, "duplicates.groups", 2)).containsExactly("K-type file 25");
    }

    @Test
    void many_changed_at_once_keep_what_was_edited_while_they_were_worked_out() throws InterruptedException {
        InstrumentsPanel panel = Shots.onEventThread(() -> {
            InstrumentsPanel made = new InstrumentsPanel(desk, new MemorySettings());
            made.attach();
            return made;
        });
        desk.settle();
        Panels.perform(desk, () -> ((JTable) Panels.find(panel, "instruments.table")).selectAll());
        Panels.perform(desk, () -> ((JTextField) Panels.find(panel, "many.lot")).setText("b-7"));
        whileBusy(() -> {
            ((AbstractButton) Panels.find(panel, "many.change")).doClick();
            Instrument now = instrument(SampleLibrary.HAND_8);
            desk.edit(
                    "Line meanwhile",
                    List.of(new Change.Put(
                            SampleLibrary.HAND_8, now.draft().line("Moor").instrument())));
        });

        assertThat(instrument(SampleLibrary.HAND_8).line()).isEqualTo("Moor");
        assertThat(instrument(SampleLibrary.HAND_8).supply().lot()).isEqualTo("b-7");
        assertThat(instrument(SampleLibrary.ROTARY).supply().lot()).isEqualTo("b-7");
    }

    @Test
    void the_numbers_shown_are_those_of_the_instrument_selected_last_and_none_while_they_are_worked_out()
            throws InterruptedException {
        InstrumentsPanel panel = Shots.onEventThread(() -> {
            InstrumentsPanel made = new InstrumentsPanel(desk, new MemorySettings());
            made.attach();
            return made;
        });
        Panels.perform(desk, () -> desk.select(SampleLibrary.ROTARY));
        String ofRotary = number(panel);
        whileBusy(() -> {
            JTable table = (JTable) Panels.find(panel, "instruments.table");
            table.setRowSelectionInterval(0, 0);
            assertThat(number(panel)).isEqualTo("Bending moment at 45°: –");
            table.setRowSelectionInterval(2, 2);
        });
        String ofHand = number(panel);
        Panels.perform(desk, () -> desk.select(SampleLibrary.ROTARY));

        assertThat(ofRotary).contains("N·mm", "estimate");
        assertThat(ofHand).contains("N·mm", "estimate").isNotEqualTo(ofRotary);
        assertThat(number(panel)).isEqualTo(ofRotary);
    }

    private static String number(InstrumentsPanel panel) {
        return ((Prose) Panels.find(panel, "instrument.number.bending-moment-45")).getText();
    }

    private Instrument instrument(ThingId id) {
        return desk.snapshot().thing(id, Instrument.class).orElseThrow();
    }

    private static List<String> column(JComponent in, String name, int column) {
        JTable table = (JTable) Panels.find((java.awt.Container) in, name);
        return IntStream.range(0, table.getRowCount())
                .mapToObj(row -> String.valueOf(table.getValueAt(row, column)))
                .toList();
    }

    /** Does something while the desk's worker is kept busy, then lets it go on and waits for all that follows. */
    private void whileBusy(Runnable action) throws InterruptedException {
        CountDownLatch free = new CountDownLatch(1);
        Shots.onEventThread(() -> {
            desk.compute(new Object(), "Keeping busy", progress -> awaited(free), done -> {});
            action.run();
            return free;
        });
        free.countDown();
        desk.settle();
        desk.settle();
        desk.settle();
    }

    private static CountDownLatch awaited(CountDownLatch free) {
        try {
            free.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return free;
    }
}
