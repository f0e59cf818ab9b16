package org.taperwright.sequencer.scene;

import java.awt.Point;
import org.netbeans.api.visual.action.SelectProvider;
import org.netbeans.api.visual.widget.Widget;

/** Selects the step whose lane is pressed. */
final class StepSelection implements SelectProvider {
    private final SceneOrders orders;
    private final LaneWidget lane;

    StepSelection(SceneOrders orders, LaneWidget lane) {
        this.orders = orders;
        this.lane = lane;
    }

    @Override
    public boolean isAimingAllowed(Widget widget, Point at, boolean invert) {
        return false;
    }

    @Override
    public boolean isSelectionAllowed(Widget widget, Point at, boolean invert) {
        return true;
    }

    @Override
    public void select(Widget widget, Point at, boolean invert) {
        orders.select(lane.lane().index());
    }
}
