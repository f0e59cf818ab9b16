package org.taperwright.application;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.swing.JTree;

/** The library's tree as a person uses it: things found by how their names begin. */
final class LibraryTree {
    private LibraryTree() {}

    /** Opens a thing by Enter. */
    static void open(Hands hands, String name) {
        hands.click(place(hands, name));
        hands.press(KeyEvent.VK_ENTER);
    }

    /** Where a thing stands on the screen, scrolled into sight. */
    static Point place(Hands hands, String name) {
        JTree tree = hands.find("library.tree", JTree.class);
        hands.await("the library to hold " + name, () -> row(tree, name) >= 0);
        return hands.onEventThread(() -> {
            int row = row(tree, name);
            tree.scrollRowToVisible(row);
            Rectangle bounds = Objects.requireNonNull(tree.getRowBounds(row));
            Point corner = tree.getLocationOnScreen();
            return new Point(corner.x + bounds.x + 30, corner.y + bounds.y + bounds.height / 2);
        });
    }

    private static int row(JTree tree, String name) {
        return IntStream.range(0, tree.getRowCount())
                .filter(row -> {
                    Object value = tree.getPathForRow(row).getLastPathComponent();
                    return tree.convertValueToText(value, false, false, true, row, false)
                            .startsWith(name);
                })
                .findFirst()
                .orElse(-1);
    }
}
