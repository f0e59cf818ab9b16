package org.taperwright.sequencer.ui;

import javax.swing.JPanel;
import org.taperwright.workbench.api.Desk;

/** The canal along its length, one lane for each step. */
public final class SequencePanel extends JPanel {
    /** Makes the panel on a desk. */
    public SequencePanel(Desk desk) {
        setName("sequencePanel");
    }
}
