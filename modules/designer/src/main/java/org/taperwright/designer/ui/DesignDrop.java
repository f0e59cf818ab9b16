package org.taperwright.designer.ui;

import java.util.Optional;
import javax.swing.TransferHandler;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.ThingTransfer;

/** Opens a design that is dropped or pasted on the window. */
final class DesignDrop extends TransferHandler {
    private final transient Desk desk;

    DesignDrop(Desk desk) {
        this.desk = desk;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(ThingTransfer.FLAVOUR);
    }

    @Override
    public boolean importData(TransferSupport support) {
        Optional<ThingId> design = ThingTransfer.from(support.getTransferable()).stream()
                .flatMap(transfer -> transfer.ids().stream())
                .filter(id -> desk.snapshot().thing(id, Design.class).isPresent())
                .findFirst();
        design.ifPresent(desk::select);
        return design.isPresent();
    }
}
