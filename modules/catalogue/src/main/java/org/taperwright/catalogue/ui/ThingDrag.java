package org.taperwright.catalogue.ui;

import java.awt.datatransfer.Transferable;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.ThingTransfer;

/** Lets the selected things be dragged, or copied to the clipboard, into any window that takes them. */
final class ThingDrag extends TransferHandler {
    private final transient Supplier<List<ThingId>> selection;

    /**
     * Makes a source.
     *
     * @param selection the things selected at the moment
     */
    ThingDrag(Supplier<List<ThingId>> selection) {
        this.selection = selection;
    }

    @Override
    public int getSourceActions(JComponent source) {
        return COPY;
    }

    @Override
    protected @Nullable Transferable createTransferable(JComponent source) {
        List<ThingId> ids = selection.get();
        return ids.isEmpty() ? null : new ThingTransfer(ids);
    }
}
