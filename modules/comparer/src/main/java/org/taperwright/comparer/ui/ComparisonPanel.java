package org.taperwright.comparer.ui;

import javax.swing.JPanel;
import org.taperwright.workbench.api.Desk;

/** Designs side by side against a datum. */
public final class ComparisonPanel extends JPanel {
    /** Makes the panel on a desk. */
    public ComparisonPanel(Desk desk) {
        setName("comparisonPanel");
    }
}
