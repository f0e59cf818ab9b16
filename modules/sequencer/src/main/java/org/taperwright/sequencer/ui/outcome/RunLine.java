package org.taperwright.sequencer.ui.outcome;

import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** What the numbers are worth in a few words, how far a computation is, and a button that stops or begins it. */
final class RunLine extends JPanel {
    private static final int WHOLE = 1000;
    private static final int BAR_WIDTH = 72;
    private static final int BAR_HEIGHT = 8;

    private final JLabel words = new JLabel(" ");
    private final JProgressBar bar = new JProgressBar(0, WHOLE);
    private final JButton button;
    private transient Runnable action = () -> {};

    RunLine(String name) {
        super(new ShrinkingRow(Spacing.NEAR));
        setOpaque(false);
        setName(name);
        words.setName(name + ".words");
        words.setFont(Ink.smallFont());
        bar.setName(name + ".bar");
        bar.setVisible(false);
        bar.setPreferredSize(new Dimension(BAR_WIDTH, BAR_HEIGHT));
        bar.getAccessibleContext().setAccessibleName("How far the computation is");
        button = new JButton(new AbstractAction("Stop") {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
        button.setName(name + ".button");
        button.setMargin(new Insets(0, Spacing.NEAR, 0, Spacing.NEAR));
        button.setVisible(false);
        add(words);
        add(bar);
        add(button);
    }

    /** Says something that stands as it is. */
    void say(String text) {
        words.setText(text.isEmpty() ? " " : text);
        words.setForeground(Ink.quiet());
        bar.setVisible(false);
        button.setVisible(false);
        revalidate();
    }

    /** Says something that deserves a look. */
    void warn(String text) {
        say(text);
        words.setForeground(Ink.unusual());
    }

    /** Says something and offers to do something about it. */
    void offer(String text, String deed, Runnable does) {
        warn(text);
        button.setText(deed);
        button.setVisible(true);
        action = does;
    }

    /** Shows how far a computation is, with a button that stops it. */
    void running(double fraction, String text, Runnable stop) {
        words.setText(text);
        words.setForeground(Ink.quiet());
        bar.setValue((int) Math.round(fraction * WHOLE));
        bar.setVisible(true);
        button.setText("Stop");
        button.setVisible(true);
        action = stop;
        revalidate();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (words != null) {
            words.setFont(Ink.smallFont());
            words.setForeground(Ink.quiet());
        }
    }
}
