package org.taperwright.kit.ui;

import java.util.List;
import java.util.function.Predicate;
import javax.swing.TransferHandler;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.ThingTransfer;

/** Takes instruments, and a motor, that are dragged or pasted here. */
final class InstrumentDrop extends TransferHandler {
    private final transient Predicate<List<ThingId>> taker;

    /**
     * @param taker takes things; whether it took any
     */
    InstrumentDrop(Predicate<List<ThingId>> taker) {
        this.taker = taker;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        boolean ours = support.isDataFlavorSupported(ThingTransfer.FLAVOUR);
        if (ours && support.isDrop()) {
            support.setDropAction(COPY);
        }
        return ours;
    }

    @Override
    public boolean importData(TransferSupport support) {
        return canImport(support)
                && ThingTransfer.from(support.getTransferable())
                        .map(things -> taker.test(things.ids()))
                        .orElse(false);
    }
}
