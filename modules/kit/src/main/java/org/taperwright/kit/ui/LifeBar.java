package org.taperwright.kit.ui;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** A small bar under an estimate: from nothing to the whole life, its band translucent, the estimate as a line. */
final class LifeBar {
    private static final double HEIGHT = 4;

    private LifeBar() {}

    static void paint(Graphics graphics, LifeSpent share, int width, int height) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double x = Spacing.TIGHT;
        double y = height - HEIGHT - 1;
        double room = width - 2.0 * Spacing.TIGHT;
        g.setColor(Ink.grid());
        g.fill(new Rectangle2D.Double(x, y, room, HEIGHT));
        double low = Math.min(1, share.low());
        double high = Math.min(1, share.high());
        g.setColor(Ink.translucent(Ink.accent(), 0.45));
        g.fill(new Rectangle2D.Double(x + low * room, y, Math.max(1, (high - low) * room), HEIGHT));
        g.setColor(Ink.text());
        double at = x + Math.min(1, share.central()) * room;
        g.draw(new Line2D.Double(at, y - 1, at, y + HEIGHT));
        g.dispose();
    }
}
