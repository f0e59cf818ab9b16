package org.taperwright.sequencer.scene;

import java.awt.Point;
import java.util.OptionalDouble;
import org.netbeans.api.visual.action.MoveProvider;
import org.netbeans.api.visual.action.MoveStrategy;
import org.netbeans.api.visual.widget.Widget;

/** Drags a silhouette along the canal: tried while dragged, in tenths of a millimetre, and set once on release. */
final class DepthDrag implements MoveStrategy, MoveProvider {
    private static final double STEPS_PER_MM = 10;

    private final SequenceScene scene;
    private final SceneOrders orders;
    private OptionalDouble tried = OptionalDouble.empty();
    private OptionalDouble begun = OptionalDouble.empty();

    DepthDrag(SequenceScene scene, SceneOrders orders) {
        this.scene = scene;
        this.orders = orders;
    }

    @Override
    public Point locationSuggested(Widget widget, Point original, Point suggested) {
        return new Point(suggested.x, original.y);
    }

    @Override
    public void movementStarted(Widget widget) {
        tried = OptionalDouble.empty();
        begun = OptionalDouble.of(((InstrumentWidget) widget).lane().depthMm());
    }

    /** The tip's place stands for the widget's. */
    @Override
    public Point getOriginalLocation(Widget widget) {
        double depth = ((InstrumentWidget) widget).lane().depthMm();
        return new Point(
                scene.scale().map(scale -> (int) Math.round(scale.x(depth))).orElse(0), 0);
    }

    @Override
    public void setNewLocation(Widget widget, Point tip) {
        scene.scale().ifPresent(scale -> {
            double depth = Math.max(0, Math.round(scale.depthMm(tip.x) * STEPS_PER_MM) / STEPS_PER_MM);
            LaneContent lane = ((InstrumentWidget) widget).lane();
            if (depth != lane.depthMm()) {
                tried = OptionalDouble.of(depth);
                orders.tryDepth(lane.index(), depth);
            }
        });
    }

    @Override
    public void movementFinished(Widget widget) {
        int step = ((InstrumentWidget) widget).lane().index();
        if (tried.isPresent() && !tried.equals(begun)) {
            orders.setDepth(step, tried.getAsDouble());
        } else {
            begun.ifPresent(depth -> orders.tryDepth(step, depth));
        }
    }
}
