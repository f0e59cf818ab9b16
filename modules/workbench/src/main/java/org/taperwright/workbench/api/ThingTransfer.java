package org.taperwright.workbench.api;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/**
 * Things of the library on their way from one window to another, by drag or by clipboard. It carries identifiers only:
 * whoever takes them looks the things up in the snapshot of that moment.
 *
 * @param ids the things, in the order they were picked
 */
public record ThingTransfer(List<ThingId> ids) implements Transferable {
    /** The flavour by which windows recognise things of the library. */
    public static final DataFlavor FLAVOUR = new DataFlavor(ThingTransfer.class, "Things of the library");

    public ThingTransfer {
        ids = List.copyOf(ids);
    }

    /** The things a transferable carries, if it carries any. */
    public static Optional<ThingTransfer> from(Transferable transferable) {
        if (!transferable.isDataFlavorSupported(FLAVOUR)) {
            return Optional.empty();
        }
        try {
            return Optional.of((ThingTransfer) transferable.getTransferData(FLAVOUR));
        } catch (UnsupportedFlavorException | IOException gone) {
            return Optional.empty(); // the source withdrew it meanwhile: nothing to take
        }
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {FLAVOUR};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavour) {
        return FLAVOUR.equals(flavour);
    }

    @Override
    public Object getTransferData(DataFlavor flavour) throws UnsupportedFlavorException {
        if (!isDataFlavorSupported(flavour)) {
            throw new UnsupportedFlavorException(flavour);
        }
        return this;
    }
}
