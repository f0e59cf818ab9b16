package org.taperwright.workbench.ui;

import javax.swing.JLabel;

/** A heading within a window, in the theme's font made bold. */
public final class Heading extends JLabel {
    public Heading(String words) {
        super(words);
        setFont(Ink.headingFont());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(Ink.headingFont());
    }
}
