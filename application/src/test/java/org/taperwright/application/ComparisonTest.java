package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** The comparison in the real workbench: a design dragged in, another datum, a change tried and kept, all taken back. */
@WindowTest
class ComparisonTest {
    @Test
    void aDesignIsDraggedInTheDatumChangedAChangeTriedAndKeptAndAllTakenBack(Hands hands) {
        LibraryTree.open(hands, "The standard's four types");
        JTable table = hands.find("comparison.table", JTable.class);
        hands.await("four designs", () -> table.getColumnCount() == 1 + 4 && table.isEnabled());

        Rectangle seen = hands.onEventThread(() -> {
            Rectangle visible = table.getVisibleRect();
            Point corner = table.getLocationOnScreen();
            return new Rectangle(corner.x + visible.x, corner.y + visible.y, visible.width, visible.height);
        });
        hands.drag(
                LibraryTree.place(hands, "Fescue 25/.04"),
                new Point(seen.x + seen.width / 2, seen.y + seen.height / 2));
        hands.await("five designs", () -> table.getColumnCount() == 1 + 5 && table.isEnabled());
        Screen.keep("design-dragged-in");

        JComboBox<?> datum = hands.find("comparison.datum", JComboBox.class);
        Object first = hands.onEventThread(datum::getSelectedItem);
        hands.click(datum);
        hands.press(KeyEvent.VK_DOWN);
        hands.press(KeyEvent.VK_ENTER);
        hands.await("another datum", () -> !first.equals(datum.getSelectedItem()) && table.isEnabled());

        hands.enter(hands.find("comparison.whatif.number.text", JTextField.class), "0.4");
        hands.await("a trial", () -> trial(table) && table.isEnabled());
        Screen.keep("what-if");
        assertThat(hands.onEventThread(table::getColumnCount)).isEqualTo(1 + 5);

        hands.click(hands.find("comparison.whatif.keep", JButton.class));
        hands.await("the change kept as a sixth design", () -> table.getColumnCount() == 1 + 6 && !trial(table));
        Screen.keep("what-if-kept");

        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.await("the sixth design gone", () -> table.getColumnCount() == 1 + 5 && table.isEnabled());
        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.await("the first datum again", () -> first.toString().equals(String.valueOf(datum.getSelectedItem())));
        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.await("four designs again", () -> table.getColumnCount() == 1 + 4);
    }

    private static boolean trial(JTable table) {
        for (int column = 1; column < table.getColumnCount(); column++) {
            if (table.getColumnName(column).endsWith("(trial)")) {
                return true;
            }
        }
        return false;
    }
}
