package org.taperwright.designer.ui;

import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.Design;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.XyPlot;

/**
 * The diameter along the blade with a handle at the tip and at each segment's end. Dragging up and down, or the arrow
 * keys, changes the taper of the segment that ends there (at the tip, the tip diameter); dragging along the blade, or
 * Alt with the arrow keys, moves the segment's end. One edit is made on release.
 */
final class TaperProfile extends JPanel {
    private static final double REACH = 10;
    private static final double HANDLE = 9;

    private final OpenDesign open;
    private final XyPlot plot = new XyPlot("design.profile", "Diameter along the blade, to drag");
    private Optional<Design> shown = Optional.empty();
    private Optional<ProfileDrag> drag = Optional.empty();
    private int chosen = 1;

    TaperProfile(OpenDesign open) {
        super(new BorderLayout());
        this.open = open;
        setOpaque(false);
        setName("design.profile.pane");
        plot.setPreferredSize(new Dimension(260, 170));
        plot.getAccessibleContext()
                .setAccessibleDescription("Left and right choose a handle; up and down change the taper before it; Alt"
                        + " with left and right moves it along the blade");
        plot.addOverlay(this::drawHandles);
        add(plot);
        MouseAdapter mouse = new Mouse();
        plot.addMouseListener(mouse);
        plot.addMouseMotionListener(mouse);
        plot.addKeyListener(new Keys());
        open.onShown(now -> now.shown().ifPresent(this::show));
    }

    private void show(Design design) {
        shown = Optional.of(design);
        chosen = Math.min(chosen, design.taper().size());
        // While a handle is dragged the axes stand still, or the handle would run away from the pointer.
        plot.setPlot(plotOf(design, drag.map(ProfileDrag::top)));
    }

    private Plot plotOf(Design design, Optional<Double> heldTop) {
        List<Plot.Spot> spots = ProfileDrag.corners(design).stream()
                .map(corner -> new Plot.Spot(corner.getX(), corner.getY()))
                .toList();
        double least = spots.stream().mapToDouble(Plot.Spot::y).min().orElse(0);
        double greatest = spots.stream().mapToDouble(Plot.Spot::y).max().orElse(1);
        double top = heldTop.orElse(Math.ceil(greatest * 12) / 10);
        SeriesLook look = open.look();
        double end = Math.max(16, Math.ceil(design.workingPartMm()));
        return Plot.of(
                Plot.Axis.of("Distance from the tip", "mm", 0, end),
                Plot.Axis.of("Diameter", "mm", least < 0 ? 1.2 * least : 0, top),
                List.of(new Plot.Curve("", look, Plot.Style.LINE, spots)));
    }

    private void drawHandles(Graphics2D g) {
        if (shown.isEmpty()) {
            return;
        }
        List<Point2D> corners = ProfileDrag.corners(shown.get());
        for (int i = 0; i < corners.size(); i++) {
            Point2D at = plot.toPixels(corners.get(i).getX(), corners.get(i).getY());
            Ellipse2D handle = new Ellipse2D.Double(at.getX() - HANDLE / 2, at.getY() - HANDLE / 2, HANDLE, HANDLE);
            boolean strong = i == chosen && (plot.isFocusOwner() || drag.isPresent());
            g.setColor(strong ? Ink.accent() : Ink.paper());
            g.fill(handle);
            g.setStroke(new BasicStroke(1.6f));
            g.setColor(strong ? Ink.text() : open.look().colour());
            g.draw(handle);
        }
    }

    private OptionalInt handleAt(MouseEvent event) {
        List<Point2D> corners = shown.map(ProfileDrag::corners).orElse(List.of());
        OptionalInt nearest = OptionalInt.empty();
        double least = REACH;
        for (int i = 0; i < corners.size(); i++) {
            double away =
                    plot.toPixels(corners.get(i).getX(), corners.get(i).getY()).distance(event.getPoint());
            if (away < least) {
                least = away;
                nearest = OptionalInt.of(i);
            }
        }
        return nearest;
    }

    private void begin(int handle) {
        chosen = handle;
        drag = shown.map(
                design -> new ProfileDrag(design, handle, plot.plot().y().to().orElse(1)));
        plot.repaint();
    }

    private void move(double level, double diameter, boolean fine) {
        drag = drag.map(now -> now.to(level, diameter, fine));
        drag.ifPresent(now -> open.tryOut(design -> now.design()));
    }

    private void finish() {
        Optional<ProfileDrag> done = drag;
        drag = Optional.empty();
        done.filter(ProfileDrag::moved)
                .ifPresentOrElse(now -> open.edit(now.name(), design -> now.design()), open::drop);
        plot.repaint();
    }

    /** Whether a handle is being moved; for tests. */
    boolean dragging() {
        return drag.isPresent();
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            plot.requestFocusInWindow();
            if (event.getButton() == MouseEvent.BUTTON1) {
                handleAt(event).ifPresent(TaperProfile.this::begin);
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (drag.isPresent()) {
                Point2D at = plot.toAxes(event.getPoint());
                move(at.getX(), at.getY(), event.isShiftDown());
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (drag.isPresent()) {
                finish();
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            boolean over = handleAt(event).isPresent();
            plot.setCursor(Cursor.getPredefinedCursor(over ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
        }
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent event) {
            int across = event.getKeyCode() == KeyEvent.VK_RIGHT ? 1 : event.getKeyCode() == KeyEvent.VK_LEFT ? -1 : 0;
            int up = event.getKeyCode() == KeyEvent.VK_UP ? 1 : event.getKeyCode() == KeyEvent.VK_DOWN ? -1 : 0;
            if (shown.isEmpty() || across == 0 && up == 0) {
                return;
            }
            event.consume();
            if (across != 0 && !event.isAltDown()) {
                chosen = Math.max(0, Math.min(shown.get().taper().size(), chosen + across));
                plot.repaint();
                return;
            }
            if (drag.isEmpty()) {
                begin(chosen);
            }
            drag = drag.map(now -> now.stepped(across, up, event.isShiftDown()));
            drag.ifPresent(now -> open.tryOut(design -> now.design()));
        }

        @Override
        public void keyReleased(KeyEvent event) {
            boolean arrow = event.getKeyCode() == KeyEvent.VK_UP
                    || event.getKeyCode() == KeyEvent.VK_DOWN
                    || event.getKeyCode() == KeyEvent.VK_LEFT
                    || event.getKeyCode() == KeyEvent.VK_RIGHT;
            if (arrow && drag.isPresent()) {
                finish();
            }
        }
    }
}
