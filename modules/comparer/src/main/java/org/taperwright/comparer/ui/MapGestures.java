package org.taperwright.comparer.ui;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Rectangle2D;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** Moves and magnifies the map, and opens what is clicked; by mouse and by keys. */
final class MapGestures extends MouseAdapter {
    private static final double STEP = 0.08;
    private static final double MAGNIFICATION = 1.15;

    private final TradeOffMap map;
    private Point last = new Point();

    MapGestures(TradeOffMap map) {
        this.map = map;
        map.addMouseListener(this);
        map.addMouseMotionListener(this);
        map.addMouseWheelListener(this);
        key("LEFT", () -> move(STEP, 0));
        key("RIGHT", () -> move(-STEP, 0));
        key("UP", () -> move(0, -STEP));
        key("DOWN", () -> move(0, STEP));
        key("typed +", () -> magnify(MAGNIFICATION, 0.5, 0.5));
        key("typed -", () -> magnify(1 / MAGNIFICATION, 0.5, 0.5));
        key("typed 0", () -> map.setView(MapView.WHOLE));
        key("SPACE", () -> map.choose(1));
        key("shift SPACE", () -> map.choose(-1));
        key("ENTER", map::openChosen);
    }

    private void key(String stroke, Runnable action) {
        map.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        map.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    private void move(double across, double up) {
        map.setView(map.view().moved(across, up));
    }

    private void magnify(double factor, double across, double up) {
        map.setView(map.view().magnified(factor, across, up));
    }

    @Override
    public void mousePressed(MouseEvent event) {
        last = event.getPoint();
        map.requestFocusInWindow();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (SwingUtilities.isLeftMouseButton(event)) {
            Rectangle2D area = map.area();
            move((event.getX() - last.x) / area.getWidth(), (last.y - event.getY()) / area.getHeight());
            last = event.getPoint();
        }
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        boolean something = map.thingAt(event.getPoint()).isPresent();
        map.setCursor(Cursor.getPredefinedCursor(something ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (SwingUtilities.isLeftMouseButton(event)) {
            map.openAt(event.getPoint());
        }
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        Rectangle2D area = map.area();
        double across = (event.getX() - area.getX()) / area.getWidth();
        double up = (area.getMaxY() - event.getY()) / area.getHeight();
        magnify(Math.pow(MAGNIFICATION, -event.getPreciseWheelRotation()), across, up);
    }
}
