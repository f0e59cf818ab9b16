package org.taperwright.designer.ui;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;
import org.taperwright.workbench.ui.CopyMenu;
import org.taperwright.workbench.ui.Drawing;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/**
 * The section seen from the handle, with the circumscribed circle, the core circle, and the rake and clearance angles at
 * one edge. Left and right, or a click, choose the edge.
 */
final class SectionDrawing extends Drawing {
    private static final int MARGIN = 26;
    private static final int ABOVE = 44;
    private static final int BELOW = 12;
    private static final int ARC_STEPS = 40;
    private static final BasicStroke HAIR = new BasicStroke(1f);
    private static final BasicStroke DASHED =
            new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {5, 3}, 0);

    private transient Optional<SectionAtLevel> section = Optional.empty();
    private transient SeriesLook look = new SeriesLook(0);
    private String absence = "";
    private boolean outdated;
    private int edge;

    SectionDrawing() {
        super("design.section.drawing", "Section seen from the handle");
        setPreferredSize(new Dimension(320, 300));
        setMinimumSize(new Dimension(200, 200));
        setToolTipText("Click an edge, or use left and right, to measure it");
        CopyMenu.on(this, "Section");
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                choose(event.getX(), event.getY());
            }
        });
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                int step =
                        event.getKeyCode() == KeyEvent.VK_RIGHT ? 1 : event.getKeyCode() == KeyEvent.VK_LEFT ? -1 : 0;
                if (step != 0 && edgeCount() > 0) {
                    edge = Math.floorMod(edge + step, edgeCount());
                    repaint();
                }
            }
        });
    }

    /** Shows a section. */
    void show(SectionAtLevel shown, SeriesLook as) {
        section = Optional.of(shown);
        look = as;
        outdated = false;
        edge = edgeCount() == 0 ? 0 : Math.min(edge, edgeCount() - 1);
        repaint();
    }

    /** Shows why there is no section. */
    void showNone(String why) {
        section = Optional.empty();
        absence = why;
        repaint();
    }

    /** Marks what is drawn as outdated until the next section comes. */
    void markOutdated() {
        outdated = true;
        repaint();
    }

    /** The edge whose angles are drawn. */
    Optional<Edge> measured() {
        return section.filter(shown -> edge < shown.edges().size())
                .map(shown -> shown.edges().get(edge));
    }

    private int edgeCount() {
        return section.map(shown -> shown.edges().size()).orElse(0);
    }

    private double side() {
        return Math.max(40, Math.min(getWidth() - 2 * MARGIN, getHeight() - ABOVE - BELOW));
    }

    private double x(double inDiameters) {
        return getWidth() / 2.0 + inDiameters * side();
    }

    private double y(double inDiameters) {
        return (ABOVE + getHeight() - BELOW) / 2.0 - inDiameters * side();
    }

    private void choose(int px, int py) {
        section.ifPresent(shown -> {
            List<Edge> edges = shown.edges();
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < edges.size(); i++) {
                double away = Math.hypot(
                        x(edges.get(i).at().x()) - px, y(edges.get(i).at().y()) - py);
                if (away < least) {
                    least = away;
                    edge = i;
                }
            }
            repaint();
        });
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setFont(Ink.smallFont());
        if (section.isEmpty()) {
            g.setColor(Ink.quiet());
            g.drawString(absence, Spacing.APART, getHeight() / 2);
            return;
        }
        SectionAtLevel shown = section.get();
        Path2D outline = path(shown);
        g.setColor(Ink.translucent(look.colour(), 0.16));
        g.fill(outline);
        g.setStroke(HAIR);
        g.setColor(Ink.mix(Ink.text(), Ink.paper(), 0.6));
        g.draw(circle(0.5));
        cross(g);
        g.setColor(Ink.quiet());
        g.setStroke(DASHED);
        g.draw(circle(shown.coreRadius()));
        g.setStroke(new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.setColor(look.colour());
        g.draw(outline);
        turn(g, shown.hand());
        measured().ifPresent(at -> new EdgeMeasure(at, shown.hand()).draw(g, getSize(), this::x, this::y, side()));
        captions(g, shown);
    }

    private Path2D path(SectionAtLevel shown) {
        Path2D path = new Path2D.Double();
        boolean first = true;
        for (Segment piece : shown.outline().segments()) {
            int steps = piece instanceof Segment.Line ? 1 : ARC_STEPS;
            for (int i = 0; i < steps; i++) {
                Point point = piece.at((double) i / steps);
                if (first) {
                    path.moveTo(x(point.x()), y(point.y()));
                } else {
                    path.lineTo(x(point.x()), y(point.y()));
                }
                first = false;
            }
        }
        path.closePath();
        return path;
    }

    private Ellipse2D circle(double radius) {
        return new Ellipse2D.Double(x(-radius), y(radius), 2 * radius * side(), 2 * radius * side());
    }

    private void cross(Graphics2D g) {
        g.draw(new Line2D.Double(x(0) - 5, y(0), x(0) + 5, y(0)));
        g.draw(new Line2D.Double(x(0), y(0) - 5, x(0), y(0) + 5));
    }

    /** An arrow outside the circle for the sense in which the edges lead. */
    private void turn(Graphics2D g, Hand hand) {
        double radius = 0.5 + 14 / side();
        double from = -45;
        double sweep = hand == Hand.CLOCKWISE ? -28 : 28;
        g.setStroke(new BasicStroke(1.3f));
        g.setColor(Ink.quiet());
        g.draw(new Arc2D.Double(
                x(-radius), y(radius), 2 * radius * side(), 2 * radius * side(), from - sweep / 2, sweep, Arc2D.OPEN));
        double end = Math.toRadians(from + sweep / 2);
        double tipX = x(radius * Math.cos(end));
        double tipY = y(radius * Math.sin(end));
        double along = end + (sweep > 0 ? Math.PI / 2 : -Math.PI / 2);
        Path2D head = new Path2D.Double();
        head.moveTo(tipX + 6 * Math.cos(along), tipY - 6 * Math.sin(along));
        head.lineTo(tipX + 4 * Math.cos(along + 2), tipY - 4 * Math.sin(along + 2));
        head.lineTo(tipX + 4 * Math.cos(along - 2), tipY - 4 * Math.sin(along - 2));
        head.closePath();
        g.fill(head);
    }

    private void captions(Graphics2D g, SectionAtLevel shown) {
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(Ink.text());
        String at = "Diameter " + Shown.of(shown.diameterMm(), Unit.MILLIMETRE);
        String core = "Core (dashed) " + Shown.of(2 * shown.coreRadius() * shown.diameterMm(), Unit.MILLIMETRE);
        g.drawString(at, Spacing.TIGHT, metrics.getAscent() + 2);
        g.drawString(core, Spacing.TIGHT, metrics.getAscent() + 2 + metrics.getHeight());
        String edges = edgeCount() == 0 ? "No cutting edge" : "Edge " + (edge + 1) + " of " + edgeCount() + land(shown);
        right(g, edges, metrics.getAscent() + 2);
        g.setColor(Ink.quiet());
        g.drawString("Seen from", Spacing.TIGHT, getHeight() - metrics.getHeight() - metrics.getDescent() - 2);
        g.drawString("the handle", Spacing.TIGHT, getHeight() - metrics.getDescent() - 2);
        if (outdated) {
            g.setColor(Ink.unusual());
            right(g, "outdated", metrics.getAscent() + 2 + metrics.getHeight());
        }
    }

    private String land(SectionAtLevel shown) {
        double width = measured().map(Edge::landWidth).orElse(0.0) * shown.diameterMm();
        return width > 0 ? ", land " + Shown.of(width, Unit.MILLIMETRE) : "";
    }

    private void right(Graphics2D g, String words, int y) {
        g.drawString(words, getWidth() - g.getFontMetrics().stringWidth(words) - Spacing.TIGHT, y);
    }
}
