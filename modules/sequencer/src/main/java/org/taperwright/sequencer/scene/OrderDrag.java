package org.taperwright.sequencer.scene;

import java.awt.Point;
import java.util.Optional;
import org.netbeans.api.visual.action.MoveProvider;
import org.netbeans.api.visual.action.MoveStrategy;
import org.netbeans.api.visual.widget.Widget;

/** Drags a lane by its label up or down; a line shows where it would stand. */
final class OrderDrag implements MoveStrategy, MoveProvider {
    private final SequenceScene scene;
    private final SceneOrders orders;
    private Optional<Integer> place = Optional.empty();

    OrderDrag(SequenceScene scene, SceneOrders orders) {
        this.scene = scene;
        this.orders = orders;
    }

    @Override
    public Point locationSuggested(Widget widget, Point original, Point suggested) {
        return new Point(original.x, suggested.y);
    }

    @Override
    public void movementStarted(Widget widget) {
        place = Optional.empty();
    }

    /** The middle of the lane stands for the widget's place. */
    @Override
    public Point getOriginalLocation(Widget widget) {
        int index = ((StepLabel) widget).lane().index();
        SceneLayout layout = scene.layout();
        return new Point(0, layout.laneTop(index) + layout.laneHeight() / 2);
    }

    @Override
    public void setNewLocation(Widget widget, Point middle) {
        int from = ((StepLabel) widget).lane().index();
        int before = scene.placeAt(middle);
        place = before == from || before == from + 1 ? Optional.empty() : Optional.of(before);
        scene.markPlace(place);
    }

    @Override
    public void movementFinished(Widget widget) {
        int from = ((StepLabel) widget).lane().index();
        scene.markPlace(Optional.empty());
        place.ifPresent(before -> orders.move(from, before > from ? before - 1 : before));
    }
}
