package org.taperwright.application;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** What a clinic does with its catalogue in the real workbench: enters, imports, logs, discards, looks back. */
@WindowTest
class CatalogueTest {
    @Test
    void aFieldOfAnInstrumentIsEnteredAndTakenBackByName(Hands hands) {
        Fields fields = new Fields(hands);
        fields.select(instruments(hands), 0);
        fields.enter("instrument.lot", "b-77");

        Screen.keep("instrument-entered");
        JTextField lot = hands.find("instrument.lot", JTextField.class);
        fields.undo("Lot of", "the lot to be as it was", () -> !lot.getText().equals("b-77"));
    }

    @Test
    void aTableWithAFaultIsImportedButForTheFaultyRow(Hands hands) throws IOException {
        Fields fields = new Fields(hands);
        JTable instruments = instruments(hands);
        int before = hands.onEventThread(instruments::getRowCount);
        Path table = Files.createTempFile("heron", ".csv");
        Files.writeString(
                table, "Name,Size,Taper,Length\nHeron 20,20,.02,25\nHeron 30,thirty,.02,25\nHeron 40,40,.02,25\n");

        hands.choose("File", "Import table");
        fields.enter("import.file", table.toString());
        JTable rejected = hands.find("import.rejected", JTable.class);
        hands.await(
                "the line that cannot be read",
                () -> rejected.getRowCount() == 1 && rejected.getValueAt(0, 0).equals("3"));
        Screen.keep("import-with-a-fault");
        hands.click(hands.find("import.take", JButton.class));
        hands.await("two instruments more", () -> instruments.getRowCount() == before + 2);
        fields.close(hands.find("import.close", JButton.class), "the dialog");

        fields.undo("Import 2 things", "the instruments gone again", () -> instruments.getRowCount() == before);
    }

    @Test
    void aUseIsLoggedByAKeyAndWhatIsDueIsDiscarded(Hands hands) {
        Fields fields = new Fields(hands);
        hands.choose("Window", "Kit");
        JTable pieces = hands.find("kit.pieces", JTable.class);
        fields.select(pieces, 0);
        String before = hands.onEventThread(() -> String.valueOf(pieces.getValueAt(0, 5)));
        hands.press(KeyEvent.VK_U);
        hands.await(
                "one use more", () -> !String.valueOf(pieces.getValueAt(0, 5)).equals(before));
        Screen.keep("kit");

        fields.tab(hands.find("kit.tabs", JTabbedPane.class), 1);
        JButton discard = hands.find("kit.discards.discard-all-that-are-due", JButton.class);
        hands.await("something due", discard::isEnabled);
        Screen.keep("kit-to-discard");
        hands.click(discard);
        hands.await("nothing due any more", () -> !discard.isEnabled());

        fields.undo("Discard", "it to be due again", discard::isEnabled);
    }

    @Test
    void anInstrumentIsBroughtBackFromItsPast(Hands hands) {
        Fields fields = new Fields(hands);
        JTable instruments = instruments(hands);
        fields.select(instruments, 1);
        fields.enter("instrument.line", "first");
        fields.enter("instrument.line", "second");
        fields.select(instruments, 0);
        fields.select(instruments, 1);
        fields.awaitText("instrument.line", "second");

        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_H);
        JTable steps = hands.find("history.steps", JTable.class);
        hands.await("the past", () -> steps.getRowCount() >= 3);
        int kept = hands.onEventThread(steps::getRowCount);
        fields.select(steps, 1);
        Screen.keep("history");
        hands.click(hands.find("history.back", JButton.class));
        hands.await("one step more", () -> steps.getRowCount() == kept + 1);
        fields.close(hands.find("history.close", JButton.class), "the dialog");

        fields.awaitText("instrument.line", "first");
    }

    private static JTable instruments(Hands hands) {
        hands.choose("Window", "Instruments");
        JTable table = hands.find("instruments.table", JTable.class);
        hands.await("the instruments", () -> table.getRowCount() > 50);
        return table;
    }
}
