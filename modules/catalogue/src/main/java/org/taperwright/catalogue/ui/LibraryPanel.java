package org.taperwright.catalogue.ui;

import javax.swing.JPanel;
import org.taperwright.workbench.api.Desk;

/** Everything in the library, by kind, with a search box. */
public final class LibraryPanel extends JPanel {
    /** Makes the panel on a desk. */
    public LibraryPanel(Desk desk) {
        setName("libraryPanel");
    }
}
