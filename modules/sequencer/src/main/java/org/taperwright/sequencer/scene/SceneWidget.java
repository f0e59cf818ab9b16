package org.taperwright.sequencer.scene;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import javax.swing.SwingUtilities;
import org.netbeans.api.visual.widget.Scene;
import org.netbeans.api.visual.widget.Widget;
import org.taperwright.workbench.ui.Ink;

/** A widget that draws itself as vectors, in the theme's colours of the moment, within bounds it is given. */
abstract class SceneWidget extends Widget {
    private Rectangle area = new Rectangle();

    SceneWidget(Scene scene) {
        super(scene);
        setCheckClipping(true);
    }

    /** Sets where it stands in its parent and how large it is. */
    final void place(int x, int y, int width, int height) {
        area = new Rectangle(0, 0, Math.max(1, width), Math.max(1, height));
        setPreferredLocation(new java.awt.Point(x, y));
        setPreferredBounds(area);
        revalidate();
        repaint();
    }

    /** Its own area, beginning at 0, 0. */
    final Rectangle area() {
        return area;
    }

    @Override
    protected final Rectangle calculateClientArea() {
        return area;
    }

    @Override
    protected final void paintWidget() {
        Graphics2D g = (Graphics2D) getGraphics().create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(Ink.font());
        draw(g);
        g.dispose();
    }

    /** Draws within {@link #area}. */
    abstract void draw(Graphics2D g);

    /** A text cut to a width, with an ellipsis where it was cut. */
    static String cut(FontMetrics metrics, String text, double width) {
        return SwingUtilities.layoutCompoundLabel(
                new javax.swing.JLabel(),
                metrics,
                text,
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
