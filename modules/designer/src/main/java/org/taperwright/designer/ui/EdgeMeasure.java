package org.taperwright.designer.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.function.DoubleUnaryOperator;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.workbench.ui.Ink;

/**
 * Rake and clearance drawn at an edge. With r the outward radius at the edge and t the direction it moves in, the leading
 * face runs inwards along {@code -r cos(rake) - t sin(rake)}, the back runs off along
 * {@code -t cos(clearance) - r sin(clearance)}; rake is measured from the radius, clearance from the tangent.
 */
record EdgeMeasure(Edge edge, Hand hand) {
    private static final double LENGTH = 0.24;
    private static final double ARC = 0.15;
    private static final BasicStroke GUIDE =
            new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {2, 3}, 0);
    private static final BasicStroke MEASURE = new BasicStroke(1.6f);

    /** Draws with the given placing of x and y in diameters, where one diameter has {@code side} pixels. */
    void draw(Graphics2D g, Dimension within, DoubleUnaryOperator x, DoubleUnaryOperator y, double side) {
        double radial = edge.angle();
        double motion = hand == Hand.CLOCKWISE ? radial - Math.PI / 2 : radial + Math.PI / 2;
        double sense = hand == Hand.CLOCKWISE ? 1 : -1;
        double inwards = radial + Math.PI;
        double face = inwards - sense * Math.toRadians(edge.rakeDeg());
        double behind = motion + Math.PI;
        double back = behind + sense * Math.toRadians(edge.clearanceDeg());
        double ex = x.applyAsDouble(edge.at().x());
        double ey = y.applyAsDouble(edge.at().y());
        double length = LENGTH * side;
        g.setColor(Ink.quiet());
        g.setStroke(GUIDE);
        ray(g, ex, ey, inwards, length * 1.25);
        ray(g, ex, ey, behind, length * 1.25);
        g.setColor(Ink.text());
        g.setStroke(MEASURE);
        ray(g, ex, ey, face, length);
        ray(g, ex, ey, back, length);
        arc(g, ex, ey, ARC * side, inwards, face);
        arc(g, ex, ey, ARC * side * 1.15, behind, back);
        word(g, within, ex, ey, length * 1.1, middle(inwards, face), "rake ", edge.rakeDeg());
        word(g, within, ex, ey, length * 0.9, middle(behind, back), "clearance ", edge.clearanceDeg());
    }

    private static void ray(Graphics2D g, double x, double y, double direction, double length) {
        g.draw(new Line2D.Double(x, y, x + length * Math.cos(direction), y - length * Math.sin(direction)));
    }

    private static void arc(Graphics2D g, double x, double y, double radius, double from, double to) {
        double sweep = Math.toDegrees(Math.IEEEremainder(to - from, 2 * Math.PI));
        g.draw(new Arc2D.Double(
                x - radius, y - radius, 2 * radius, 2 * radius, Math.toDegrees(from), sweep, Arc2D.OPEN));
    }

    private static double middle(double from, double to) {
        return from + Math.IEEEremainder(to - from, 2 * Math.PI) / 2;
    }

    /** An angle in words on a ground of paper, so that lines beneath do not cross it, kept inside what is drawn on. */
    private static void word(
            Graphics2D g,
            Dimension within,
            double x,
            double y,
            double away,
            double direction,
            String what,
            double degrees) {
        String words = what + Shown.degrees(degrees);
        Rectangle2D size = g.getFontMetrics().getStringBounds(words, g);
        double across = Math.cos(direction);
        double anchor = Math.abs(across) < 0.3 ? 0.5 : across < 0 ? 1 : 0;
        double left =
                Math.max(2, Math.min(within.width - size.getWidth() - 2, x + away * across - anchor * size.getWidth()));
        double base = y - away * Math.sin(direction) + g.getFontMetrics().getAscent() / 2.0;
        Rectangle2D ground = new Rectangle2D.Double(
                left - 2, base - g.getFontMetrics().getAscent(), size.getWidth() + 4, size.getHeight());
        Color ink = g.getColor();
        g.setColor(Ink.translucent(Ink.paper(), 0.82));
        g.fill(ground);
        g.setColor(ink);
        g.drawString(words, (float) left, (float) base);
    }
}
