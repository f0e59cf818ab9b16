package org.taperwright.comparer.ui;

import java.awt.FontMetrics;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Cuts texts to the room they have, with an ellipsis where something was cut. */
final class ShortText {
    private ShortText() {}

    static String cut(JComponent on, FontMetrics metrics, String words, double width) {
        return SwingUtilities.layoutCompoundLabel(
                on,
                metrics,
                words,
                null,
                0,
                0,
                0,
                0,
                new Rectangle(0, 0, (int) Math.max(1, width), metrics.getHeight()),
                new Rectangle(),
                new Rectangle(),
                0);
    }
}
