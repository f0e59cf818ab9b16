package org.taperwright.sequencer.scene;

import java.awt.Point;
import java.awt.datatransfer.Transferable;
import java.util.Optional;
import org.netbeans.api.visual.action.AcceptProvider;
import org.netbeans.api.visual.action.ConnectorState;
import org.netbeans.api.visual.widget.Widget;
import org.taperwright.workbench.api.ThingTransfer;

/** Takes instruments dropped on the scene as new steps before the lane nearest beneath. */
final class InstrumentDrop implements AcceptProvider {
    private final SequenceScene scene;
    private final SceneOrders orders;

    InstrumentDrop(SequenceScene scene, SceneOrders orders) {
        this.scene = scene;
        this.orders = orders;
    }

    @Override
    public ConnectorState isAcceptable(Widget widget, Point at, Transferable transferable) {
        boolean things = transferable.isDataFlavorSupported(ThingTransfer.FLAVOUR);
        scene.markPlace(things ? Optional.of(scene.placeAt(at)) : Optional.empty());
        return things ? ConnectorState.ACCEPT : ConnectorState.REJECT;
    }

    @Override
    public void accept(Widget widget, Point at, Transferable transferable) {
        scene.markPlace(Optional.empty());
        ThingTransfer.from(transferable).ifPresent(transfer -> orders.insert(scene.placeAt(at), transfer.ids()));
    }
}
