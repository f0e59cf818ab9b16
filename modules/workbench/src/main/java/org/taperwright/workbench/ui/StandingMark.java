package org.taperwright.workbench.ui;

import javax.swing.JLabel;
import org.taperwright.mechanics.quantity.Standing;

/** Says beside a value how far it may be trusted: computed, estimate or index, explained on hovering. */
public final class StandingMark extends JLabel {
    public StandingMark(Standing standing) {
        super(standing.word());
        setName("standing." + standing.word());
        setToolTipText(explanation(standing));
        getAccessibleContext().setAccessibleDescription(explanation(standing));
        dress();
    }

    /** The word with its meaning, for tooltips in tables. */
    public static String explanation(Standing standing) {
        String word = standing.word();
        return Character.toUpperCase(word.charAt(0)) + word.substring(1) + ": " + standing.meaning() + ".";
    }

    @Override
    public void updateUI() {
        super.updateUI();
        dress();
    }

    private void dress() {
        setFont(Ink.smallFont());
        setForeground(Ink.quiet());
    }
}
