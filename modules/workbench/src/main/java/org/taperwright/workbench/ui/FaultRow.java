package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.taperwright.mechanics.work.Fault;

/** One fault: its weight as a word, where it is, what is there and what was expected. */
final class FaultRow extends JPanel {
    private static final int WORD = 84;

    FaultRow(Fault fault, String place, Runnable go) {
        super(new BorderLayout(Spacing.NEAR, 0));
        boolean impossible = fault.weight() == Fault.Weight.IMPOSSIBLE;
        String word = impossible ? "Impossible" : "Unusual";
        setName("fault." + fault.where());
        setOpaque(false);
        setFocusable(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        setToolTipText("Go to the field");
        getAccessibleContext().setAccessibleName(word + ". " + place + ": " + fault.what() + ". " + fault.expected());
        add(new WeightWord(word, impossible), BorderLayout.LINE_START);
        Prose prose = new Prose(place + ": " + fault.what() + "; " + fault.expected() + ".", Ink::text, false);
        prose.setName(getName() + ".text");
        add(prose, BorderLayout.CENTER);
        getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
        getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "go");
        getActionMap().put("go", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                go.run();
            }
        });
        MouseAdapter click = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                go.run();
            }
        };
        addMouseListener(click);
        prose.addMouseListener(click);
        outline(false);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                outline(true);
            }

            @Override
            public void focusLost(FocusEvent event) {
                outline(false);
            }
        });
    }

    private void outline(boolean focused) {
        Color line = focused ? Ink.accent() : Ink.paper();
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(Ink.translucent(line, focused ? 1 : 0)),
                BorderFactory.createEmptyBorder(1, 1, 1, 1)));
    }

    /** The weight as a word, at the top of the row. */
    private static final class WeightWord extends JLabel {
        private final boolean impossible;

        WeightWord(String word, boolean impossible) {
            super(word);
            this.impossible = impossible;
            setVerticalAlignment(TOP);
            dress();
        }

        @Override
        public void updateUI() {
            super.updateUI();
            dress();
        }

        private void dress() {
            setFont(Ink.headingFont());
            setForeground(impossible ? Ink.fault() : Ink.unusual());
            setPreferredSize(new java.awt.Dimension(
                    Math.max(WORD, getFontMetrics(getFont()).stringWidth("Impossible") + 2),
                    getFontMetrics(getFont()).getHeight()));
        }
    }
}
