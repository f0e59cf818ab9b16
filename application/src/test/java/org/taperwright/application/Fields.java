package org.taperwright.application;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;

/** What a person does again and again with fields, tables and the Edit menu. */
final class Fields {
    private static final int ATTEMPTS = 5;
    private static final Duration BETWEEN = Duration.ofSeconds(4);

    private final Hands hands;

    Fields(Hands hands) {
        this.hands = hands;
    }

    /** Scrolls to a field, replaces what it holds, and presses Enter. */
    void enter(String name, String text) {
        type(name, text);
        hands.press(KeyEvent.VK_ENTER);
    }

    /** Scrolls to a field and replaces what it holds, without Enter. */
    void type(String name, String text) {
        JTextField field = hands.find(name, JTextField.class);
        hands.onEventThread(() -> {
            ((JComponent) field.getParent()).scrollRectToVisible(field.getBounds());
            return name;
        });
        hands.clickUntil(field, "the keyboard to come to " + name, field::isFocusOwner);
        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        hands.press(KeyEvent.VK_DELETE);
        hands.type(text);
        hands.await("the text to be typed", () -> field.getText().equals(text));
    }

    /** Waits until a field holds a text. */
    void awaitText(String name, String text) {
        JTextComponent field = hands.find(name, JTextComponent.class);
        hands.await(name + " to hold \"" + text + "\"", () -> field.getText().equals(text));
    }

    /** Clicks a row of a table until it is the one selected. */
    void select(JTable table, int row) {
        hands.await("row " + row, () -> table.getRowCount() > row);
        Point at = hands.onEventThread(() -> {
            table.scrollRectToVisible(table.getCellRect(row, 1, true));
            Rectangle cell = table.getCellRect(row, 1, true);
            Point corner = table.getLocationOnScreen();
            return new Point(corner.x + cell.x + 8, corner.y + (int) cell.getCenterY());
        });
        for (int attempt = 0; attempt < ATTEMPTS && !hands.onEventThread(() -> table.isRowSelected(row)); attempt++) {
            hands.click(at);
        }
        hands.await("row " + row + " to be selected", () -> table.isRowSelected(row));
    }

    /** Clicks a tab. */
    void tab(JTabbedPane tabs, int index) {
        Point at = hands.onEventThread(() -> {
            Rectangle bounds = tabs.getBoundsAt(index);
            Point corner = tabs.getLocationOnScreen();
            return new Point(corner.x + (int) bounds.getCenterX(), corner.y + (int) bounds.getCenterY());
        });
        hands.click(at);
        hands.await("the tab", () -> tabs.getSelectedIndex() == index);
    }

    /**
     * Takes the last edit back from the menu, which must name it so; again if a click was lost, as one after a dialog may be.
     */
    void undo(String name, String what, BooleanSupplier done) {
        for (int attempt = 0; attempt < ATTEMPTS && !hands.onEventThread(done::getAsBoolean); attempt++) {
            hands.click(hands.button("Edit"));
            if (hands.showsAny(AbstractButton.class, button -> named(button, "Undo " + name))) {
                hands.click(hands.button("Undo " + name));
            }
            long end = System.nanoTime() + BETWEEN.toNanos();
            while (System.nanoTime() < end && !hands.onEventThread(done::getAsBoolean)) {
                Thread.onSpinWait();
            }
        }
        hands.await(what, done);
    }

    private static boolean named(AbstractButton button, String words) {
        return button.getText() != null && button.getText().startsWith(words);
    }

    /** Closes a dialog by its button until it is gone. */
    void close(Component button, String gone) {
        hands.clickUntil(button, gone + " to go", () -> !button.isShowing());
    }
}
