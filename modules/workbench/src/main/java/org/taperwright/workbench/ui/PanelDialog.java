package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** A dialog around a panel: buttons beneath, Escape closes it, the first button answers to Enter. */
public final class PanelDialog {
    private final JDialog dialog;

    /**
     * Makes a dialog, not yet shown.
     *
     * @param over the component it belongs to
     * @param name what tests find it by
     * @param content what it shows
     * @param buttons beneath, the one for Enter first; each does what its own listeners do
     */
    public PanelDialog(Component over, String name, String title, JComponent content, List<JButton> buttons) {
        Window owner = over instanceof Window window ? window : SwingUtilities.getWindowAncestor(over);
        dialog = new JDialog(owner, title, Dialog.ModalityType.APPLICATION_MODAL);
        dialog.setName(name);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        JPanel row = new JPanel(new FlowLayout(FlowLayout.TRAILING, Spacing.NEAR, 0));
        buttons.forEach(row::add);
        JPanel all = new JPanel(new BorderLayout(0, Spacing.NEAR));
        all.setBorder(Spacing.around(Spacing.NEAR, Spacing.APART));
        all.add(content, BorderLayout.CENTER);
        if (!buttons.isEmpty()) {
            all.add(row, BorderLayout.SOUTH);
            dialog.getRootPane().setDefaultButton(buttons.get(0));
        }
        dialog.setContentPane(all);
        all.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "close");
        all.getActionMap().put("close", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                close();
            }
        });
    }

    /** Shows it, in the middle of what it belongs to, and returns when it is closed. */
    public void show() {
        dialog.pack();
        dialog.setMinimumSize(dialog.getPreferredSize());
        dialog.setLocationRelativeTo(dialog.getOwner());
        dialog.setVisible(true);
    }

    /** Closes it. */
    public void close() {
        dialog.dispose();
    }

    /** A button that acts and then closes the dialog, or only closes it. */
    public JButton closing(JButton button) {
        button.addActionListener(event -> close());
        return button;
    }
}
