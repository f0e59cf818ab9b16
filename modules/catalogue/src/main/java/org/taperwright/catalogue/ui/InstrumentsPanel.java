package org.taperwright.catalogue.ui;

import javax.swing.JPanel;
import org.taperwright.workbench.api.Desk;

/** The table of instruments. */
public final class InstrumentsPanel extends JPanel {
    /** Makes the panel on a desk. */
    public InstrumentsPanel(Desk desk) {
        setName("instrumentsPanel");
    }
}
