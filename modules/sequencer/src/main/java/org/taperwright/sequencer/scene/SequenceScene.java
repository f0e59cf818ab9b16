package org.taperwright.sequencer.scene;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.netbeans.api.visual.action.ActionFactory;
import org.netbeans.api.visual.action.WidgetAction;
import org.netbeans.api.visual.widget.LayerWidget;
import org.netbeans.api.visual.widget.Scene;
import org.netbeans.api.visual.widget.Widget;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/**
 * The canal laid out along its length, a lane for each step beneath. Instruments are dropped into it, lanes dragged up
 * and down to reorder, silhouettes along to change their depth; what is asked for goes to {@link SceneOrders}.
 */
public final class SequenceScene extends Scene {
    private final SceneOrders orders;
    private final LayerWidget lanesLayer = new LayerWidget(this);
    private final LayerWidget marksLayer = new LayerWidget(this);
    private final InsertionMark mark = new InsertionMark(this);
    private final Invitation invitation = new Invitation(this);
    private final List<LaneWidget> lanes = new ArrayList<>();
    private Optional<CanalHead> head = Optional.empty();
    private Optional<SceneContent> content = Optional.empty();
    private int width = SceneLayout.NARROWEST;
    private int viewHeight;

    /** Makes the scene for someone who carries out what is asked. */
    public SequenceScene(SceneOrders orders) {
        this.orders = orders;
        addChild(lanesLayer);
        addChild(marksLayer);
        marksLayer.addChild(mark);
        marksLayer.addChild(invitation);
        mark.setVisible(false);
        getActions().addAction(ActionFactory.createAcceptAction(new InstrumentDrop(this, orders)));
        getActions().addAction(new WidgetAction.Adapter() {
            @Override
            public State dragExit(Widget widget, WidgetDropTargetEvent event) {
                markPlace(Optional.empty());
                return State.REJECTED;
            }
        });
        setOpaque(false);
    }

    /** Shows a sequence. */
    public void show(SceneContent newContent) {
        content = Optional.of(newContent);
        layOut();
    }

    /** Lays the scene out anew for the size of the view it is seen in, px. */
    public void setViewSize(int newWidth, int newHeight) {
        if (newWidth != width || newHeight != viewHeight) {
            width = newWidth;
            viewHeight = newHeight;
            layOut();
        }
    }

    /** Makes the component in which the scene is seen; needs a display. */
    public JComponent makeView() {
        return createView();
    }

    /** Where a step's lane stands in the view, px; the first step's has the head above it. */
    public Rectangle laneArea(int step) {
        int top = step == 0 ? 0 : layout().laneTop(step);
        return new Rectangle(0, top, layout().width(), layout().laneTop(step + 1) - top);
    }

    /** What is shown. */
    public Optional<SceneContent> content() {
        return content;
    }

    private void layOut() {
        content.ifPresent(this::layOut);
        validateIfPossible();
    }

    private void layOut(SceneContent shown) {
        SceneLayout layout = layout();
        SceneScale scale = SceneScale.of(shown, layout);
        setFont(Ink.font());
        if (head.isEmpty()) {
            CanalHead added = new CanalHead(this, shown, scale, layout);
            lanesLayer.addChild(added);
            head = Optional.of(added);
        }
        head.get().show(shown, scale, layout);
        while (lanes.size() > shown.lanes().size()) {
            lanesLayer.removeChild(lanes.remove(lanes.size() - 1));
        }
        for (LaneContent lane : shown.lanes()) {
            if (lane.index() == lanes.size()) {
                add(new LaneWidget(this, shown, lane, scale, layout));
            }
            lanes.get(lane.index()).show(shown, lane, scale, layout);
        }
        invitation.setVisible(shown.lanes().isEmpty());
        invitation.place(0, layout.headHeight(), layout.width(), layout.laneHeight());
        Rectangle bounds = new Rectangle(
                0, 0, layout.width(), layout.height(Math.max(1, shown.lanes().size())));
        setMaximumBounds(bounds);
        setMinimumSize(bounds.getSize());
        revalidate();
        repaint();
    }

    private void add(LaneWidget lane) {
        lanes.add(lane);
        lanesLayer.addChild(lane);
        StepSelection select = new StepSelection(orders, lane);
        lane.getActions().addAction(ActionFactory.createSelectAction(select, false));
        DepthDrag depth = new DepthDrag(this, orders);
        lane.instrument().getActions().addAction(ActionFactory.createSelectAction(select, false));
        lane.instrument().getActions().addAction(ActionFactory.createMoveAction(depth, depth));
        OrderDrag order = new OrderDrag(this, orders);
        lane.label().getActions().addAction(ActionFactory.createSelectAction(select, false));
        lane.label().getActions().addAction(ActionFactory.createMoveAction(order, order));
    }

    /** The layout of the moment. */
    SceneLayout layout() {
        int shown = content.map(SceneContent::lanes).map(List::size).orElse(0);
        return SceneLayout.of(width, viewHeight, Math.max(1, shown), new JLabel().getFontMetrics(Ink.smallFont()));
    }

    /** The scale of the moment, when something is shown. */
    Optional<SceneScale> scale() {
        return content.map(shown -> SceneScale.of(shown, layout()));
    }

    /** Shows where something would be put in, or nothing. */
    void markPlace(Optional<Integer> place) {
        mark.setVisible(place.isPresent());
        place.ifPresent(at -> mark.place(0, layout().laneTop(at) - 2, layout().width(), 4));
        validateIfPossible();
    }

    /** Before which lane a point stands. */
    int placeAt(Point point) {
        return layout().placeAt(point.y, lanes.size());
    }

    /** The lanes, in order. */
    List<LaneWidget> lanes() {
        return List.copyOf(lanes);
    }

    /** Height that everything shown needs, px. */
    public int height() {
        return layout().height(lanes.size());
    }

    private void validateIfPossible() {
        if (getView() != null) {
            validate();
        }
    }

    @Override
    protected void paintBackground() {
        // the view's own background shows through
    }

    /** What to do in a sequence without steps. */
    private static final class Invitation extends SceneWidget {
        Invitation(Scene scene) {
            super(scene);
        }

        @Override
        void draw(Graphics2D g) {
            g.setColor(Ink.quiet());
            FontMetrics metrics = g.getFontMetrics();
            String words = "Drag instruments here, or select one in the catalogue and press Insert.";
            String shown = cut(metrics, words, area().width - 2.0 * Spacing.APART);
            g.drawString(shown, Spacing.APART, area().height / 2 + metrics.getAscent() / 2);
        }
    }

    /** The line where a dragged step or instrument would stand. */
    private static final class InsertionMark extends SceneWidget {
        InsertionMark(Scene scene) {
            super(scene);
        }

        @Override
        void draw(Graphics2D g) {
            g.setColor(Ink.accent());
            g.fillRect(0, 0, area().width, area().height);
        }
    }
}
