package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;

/** Edits are taken back by name, from the menu and from the keyboard, in the real workbench. */
@WindowTest
class UndoTest {
    @Test
    void anEditIsTakenBackByNameFromTheMenuAndMadeAgainByKey(Hands hands) {
        JTable table = hands.find("instruments.table", JTable.class);
        hands.await("the instruments", () -> table.getRowCount() > 0);
        int before = hands.onEventThread(table::getRowCount);

        hands.click(hands.find("entry.add", JButton.class));
        hands.await("one instrument more", () -> table.getRowCount() == before + 1);

        hands.click(hands.button("Edit"));
        AbstractButton undo = hands.button("Undo ");
        String words = hands.onEventThread(undo::getText);
        assertThat(words).as("the menu names the edit").hasSizeGreaterThan("Undo ".length());
        hands.click(undo);
        hands.await("the instrument gone again", () -> table.getRowCount() == before);

        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
        hands.await("the instrument back", () -> table.getRowCount() == before + 1);
        Screen.keep("instrument-added");

        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.await("the instrument gone by key", () -> table.getRowCount() == before);
    }
}
