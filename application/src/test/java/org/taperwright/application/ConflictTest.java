package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.AppendResult;
import org.taperwright.library.store.Contents;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.ThingKind;
import org.taperwright.shaping.instrument.Instrument;

/** Two programs on one library: the later edit is not stored before a person has seen both versions and chosen. */
@WindowTest
class ConflictTest {
    private static final int ATTEMPTS = 5;

    @Test
    void whoeverComesLaterSeesBothVersionsAndChooses(Hands hands) {
        Fields fields = new Fields(hands);
        hands.choose("Window", "Instruments");
        JTable table = hands.find("instruments.table", JTable.class);
        hands.await("the instruments", () -> table.getRowCount() > 2);
        fields.select(table, 0);
        JTextField shown = hands.find("instrument.name", JTextField.class);
        hands.await("the name", () -> !shown.getText().isEmpty());
        String name = hands.onEventThread(shown::getText);
        OpenResult opened = LibraryStore.open(Path.of(System.getProperty("taperwright.library")), JsonForms.forStore());
        try (LibraryStore other = ((OpenResult.Opened) opened).store()) {
            // the workbench looks for others' edits from time to time: if it did so in between, there is no conflict
            for (int attempt = 0; attempt < ATTEMPTS && !hands.shows("conflict.fields"); attempt++) {
                String theirs = "theirs-" + attempt;
                enterWhileTheOtherStores(hands, "mine-" + attempt, () -> edit(other, name, theirs));
                long end = System.nanoTime() + 4_000_000_000L;
                while (System.nanoTime() < end && !hands.shows("conflict.fields")) {
                    Thread.onSpinWait();
                }
                if (hands.shows("conflict.fields")) {
                    JTable both = hands.find("conflict.fields", JTable.class);
                    Screen.keep("conflict");
                    assertThat(List.of(both.getValueAt(0, 2), both.getValueAt(0, 3)))
                            .containsExactly("mine-" + attempt, theirs);
                    JButton take = hands.find("conflict.theirs", JButton.class);
                    hands.clickUntil(take, "the dialog to go", () -> !take.isShowing());
                    fields.awaitText("instrument.lot", theirs);
                    return;
                }
            }
        }
        throw new AssertionError("no conflict in " + ATTEMPTS + " attempts");
    }

    /** Enters a lot in the moment in which another program stores its own, before the workbench can have heard of it. */
    private static void enterWhileTheOtherStores(Hands hands, String mine, Runnable others) {
        JTextField lot = hands.find("instrument.lot", JTextField.class);
        hands.onEventThread(() -> {
            others.run();
            lot.setText(mine);
            lot.postActionEvent();
            return mine;
        });
    }

    /** What another program does: gives an instrument another lot, on top of what is stored. */
    private static void edit(LibraryStore other, String name, String lot) {
        Contents contents = other.contents();
        Entry entry = contents.snapshot().ofKind(ThingKind.INSTRUMENT).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        Instrument before = (Instrument) entry.thing();
        Instrument after = before.draft().supply(before.supply().withLot(lot)).instrument();
        Draft draft = new Draft(
                entry.id(),
                ThingKind.INSTRUMENT,
                Optional.of(after),
                contents.heads().get(entry.id()));
        assertThat(other.append("Lot to " + lot, "Ada", Instant.now(), List.of(draft)))
                .isInstanceOf(AppendResult.Appended.class);
    }
}
