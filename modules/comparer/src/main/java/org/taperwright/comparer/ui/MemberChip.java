package org.taperwright.comparer.ui;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/**
 * A design in the row of designs compared: its line as drawn in every figure, its name, whether it is the datum, and a
 * cross that takes it out.
 */
final class MemberChip extends JComponent {
    private static final int SWATCH = 24;
    private static final int CROSS = 8;

    private final transient Member member;
    private final transient SeriesLook look;
    private final String words;
    private final boolean removable;

    MemberChip(Member member, SeriesLook look, boolean datum, boolean removable) {
        this.member = member;
        this.look = look;
        this.removable = removable;
        words = member.name() + (datum ? " (datum)" : "");
        setName("comparison.design." + member.id().value());
        setFocusable(true);
        setFont(Ink.font());
        setToolTipText(words + ". Drag, or Alt with left and right arrow, to reorder; D makes it the datum; "
                + "Enter opens it; Delete takes it out");
    }

    Member member() {
        return member;
    }

    /** Whether a point lies on the cross. */
    boolean onCross(int x) {
        return removable && x >= getWidth() - CROSS - 2 * Spacing.NEAR;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PUSH_BUTTON;
                }
            };
            accessibleContext.setAccessibleName(words);
        }
        return accessibleContext;
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        int cross = removable ? CROSS + Spacing.NEAR : 0;
        return new Dimension(
                SWATCH + 3 * Spacing.NEAR + metrics.stringWidth(words) + cross + 1, metrics.getHeight() + Spacing.NEAR);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(SWATCH + 4 * Spacing.NEAR + CROSS, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        RoundRectangle2D edge = new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, 8, 8);
        g.setColor(isFocusOwner() ? Ink.accent() : Ink.mix(Ink.text(), Ink.paper(), 0.7));
        g.setStroke(new BasicStroke(isFocusOwner() ? 2 : 1));
        g.draw(edge);
        double middle = getHeight() / 2.0;
        g.setColor(look.colour());
        g.setStroke(look.stroke(2.2f));
        g.draw(new Line2D.Double(Spacing.NEAR, middle, Spacing.NEAR + SWATCH, middle));
        g.setColor(member.design().isPresent() ? Ink.text() : Ink.fault());
        g.setFont(getFont());
        FontMetrics metrics = g.getFontMetrics();
        int start = SWATCH + 2 * Spacing.NEAR;
        int end = getWidth() - Spacing.NEAR - (removable ? CROSS + Spacing.NEAR : 0);
        String shown = ShortText.cut(this, metrics, words, end - start);
        g.drawString(shown, start, (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent());
        if (removable) {
            cross(g, getWidth() - Spacing.NEAR - CROSS, middle - CROSS / 2.0);
        }
        g.dispose();
    }

    private static void cross(Graphics2D g, double x, double y) {
        g.setColor(Ink.quiet());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(x, y, x + CROSS, y + CROSS));
        g.draw(new Line2D.Double(x, y + CROSS, x + CROSS, y));
    }
}
