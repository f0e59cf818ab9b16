package org.taperwright.workbench.ui;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.geom.Rectangle2D;
import javax.swing.JPanel;

/**
 * A component that draws itself as vectors on the theme's background, can be reached by the keyboard and shows when it
 * has the focus.
 */
public abstract class Drawing extends JPanel {
    /**
     * @param name what tests and other code find it by
     * @param title what it shows, for assistive technology
     */
    protected Drawing(String name, String title) {
        setName(name);
        setOpaque(false);
        setFocusable(true);
        getAccessibleContext().setAccessibleName(title);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    /** Draws, in pixels of the component. */
    protected abstract void draw(Graphics2D g);

    @Override
    protected final void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        draw(g);
        if (isFocusOwner() && !isPaintingForPrint()) {
            g.setStroke(new java.awt.BasicStroke(1));
            g.setColor(Ink.accent());
            g.draw(new Rectangle2D.Double(0.5, 0.5, getWidth() - 1.0, getHeight() - 1.0));
        }
        g.dispose();
    }
}
