package org.taperwright.workbench.ui;

import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** What an empty window shows: what it would show, what to do next, and buttons that do it. */
public final class EmptyState extends JPanel {
    private static final int LINE = 430;

    public EmptyState(String name, String title, String advice, List<Action> next) {
        super(new GridBagLayout());
        setName(name);
        Heading heading = new Heading(title);
        heading.setName(name + ".title");
        heading.setHorizontalAlignment(SwingConstants.LEADING);
        Prose prose = new Prose(advice, Ink::quiet, false);
        prose.setName(name + ".advice");
        JPanel column = new JPanel(new GridBagLayout());
        column.setOpaque(false);
        GridBagConstraints at = new GridBagConstraints();
        at.gridx = 0;
        at.fill = GridBagConstraints.HORIZONTAL;
        at.weightx = 1;
        at.insets = new Insets(0, 0, Spacing.NEAR, 0);
        column.add(heading, at);
        column.add(prose, at);
        at.fill = GridBagConstraints.NONE;
        at.anchor = GridBagConstraints.LINE_START;
        column.add(javax.swing.Box.createHorizontalStrut(LINE), at);
        for (Action action : next) {
            JButton button = new JButton(action);
            button.setName(name + "." + action.getValue(Action.NAME));
            column.add(button, at);
        }
        add(column);
    }
}
