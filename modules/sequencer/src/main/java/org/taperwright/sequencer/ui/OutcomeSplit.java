package org.taperwright.sequencer.ui;

import java.awt.BorderLayout;
import java.util.prefs.Preferences;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JToggleButton;
import org.taperwright.sequencer.ui.outcome.OutcomePanel;
import org.taperwright.sequencer.ui.outcome.ShareSplit;

/** The lanes with the outcome beneath them, which can be resized and closed; whether it is open is kept from start to start. */
final class OutcomeSplit extends JPanel {
    private static final String OPEN = "outcome.open";
    private static final int LEAST_OUTCOME = 150;
    private static final double LANES_SHARE = 0.5;

    private final JComponent lanes;
    private final OutcomePanel outcome;
    private final transient Preferences settings;
    private final JSplitPane split;
    private final JToggleButton toggle = new JToggleButton("Outcome");

    OutcomeSplit(JComponent lanes, OutcomePanel outcome, Preferences settings) {
        super(new BorderLayout());
        this.lanes = lanes;
        this.outcome = outcome;
        this.settings = settings;
        split = new ShareSplit("sequence.outcomeSplit", JSplitPane.VERTICAL_SPLIT, lanes, outcome, LANES_SHARE);
        outcome.setMinimumSize(new java.awt.Dimension(LEAST_OUTCOME, LEAST_OUTCOME));
        toggle.setName("sequence.outcome");
        toggle.setMnemonic('O');
        toggle.setToolTipText("Shows or hides what each step does stroke by stroke, beneath the lanes (Alt+O)");
        toggle.setSelected(settings.getBoolean(OPEN, true));
        toggle.addActionListener(event -> {
            settings.putBoolean(OPEN, toggle.isSelected());
            layOut();
        });
        layOut();
    }

    /** The button that opens and closes the outcome. */
    JToggleButton toggle() {
        return toggle;
    }

    private void layOut() {
        removeAll();
        boolean open = toggle.isSelected();
        if (open) {
            split.setTopComponent(lanes);
            split.setBottomComponent(outcome);
            add(split, BorderLayout.CENTER);
        } else {
            add(lanes, BorderLayout.CENTER);
        }
        outcome.setOpen(open);
        revalidate();
        repaint();
    }
}
