package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import javax.swing.JPanel;

/** The caution that stands wherever values bear on a patient. */
public final class CautionLine extends JPanel {
    /** The sentence itself, for reports and dialogs. */
    public static final String SENTENCE = "Computed values compare and teach; they do not replace the manufacturer's"
            + " instructions, local rules or licensed clinical judgement.";

    public CautionLine() {
        super(new BorderLayout());
        setName("caution");
        setOpaque(false);
        Prose prose = new Prose(SENTENCE, Ink::quiet, true);
        prose.setName("caution.sentence");
        add(prose, BorderLayout.CENTER);
    }
}
