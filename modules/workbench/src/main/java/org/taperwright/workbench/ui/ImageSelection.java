package org.taperwright.workbench.ui;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;

/** A picture on the clipboard. */
record ImageSelection(Image image) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {DataFlavor.imageFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavour) {
        return DataFlavor.imageFlavor.equals(flavour);
    }

    @Override
    public Object getTransferData(DataFlavor flavour) throws UnsupportedFlavorException {
        if (!isDataFlavorSupported(flavour)) {
            throw new UnsupportedFlavorException(flavour);
        }
        return image;
    }
}
