package org.taperwright.designer.ui;

import javax.swing.JPanel;
import org.taperwright.workbench.api.Desk;

/** One design: its definition, and what follows from it. */
public final class DesignPanel extends JPanel {
    /** Makes the panel on a desk. */
    public DesignPanel(Desk desk) {
        setName("designPanel");
    }
}
