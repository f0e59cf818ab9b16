package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/**
 * Says beside the component at which an edit was asked for that it was not made, and why. Stands over the window without
 * stopping anyone, until a person closes it, or Escape or the next edit does.
 */
public final class RefusalNote extends JPanel {
    private static final int WIDTH = 380;
    private static final int LINES = 3;

    private RefusalNote(String sentence) {
        super(new BorderLayout(Spacing.NEAR, 0));
        setName("refusal.note");
        setOpaque(true);
        setBorder(Spacing.around(Spacing.NEAR));
        Prose words = new Prose(sentence, Ink::text, false);
        words.setName("refusal.note.text");
        getAccessibleContext().setAccessibleName(sentence);
        JButton close = new JButton("Close");
        close.setName("refusal.note.close");
        close.setFocusable(false);
        close.addActionListener(event -> takeAway());
        JPanel beside = new JPanel(new BorderLayout());
        beside.setOpaque(false);
        beside.add(close, BorderLayout.NORTH);
        add(words, BorderLayout.CENTER);
        add(beside, BorderLayout.LINE_END);
        getInputMap(WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke("ESCAPE"), "close");
        getActionMap().put("close", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                takeAway();
            }
        });
    }

    /** Says it beside a component, in place of what was said in that window before. */
    public static void show(JComponent at, String sentence) {
        JRootPane root = SwingUtilities.getRootPane(at);
        if (root == null) {
            return;
        }
        takeAway(root);
        JLayeredPane over = root.getLayeredPane();
        RefusalNote note = new RefusalNote(sentence);
        over.add(note, JLayeredPane.POPUP_LAYER);
        note.setBounds(place(at, over, note.size(over)));
        note.validate();
        note.repaint();
    }

    /** Takes away what is said in a component's window. */
    public static void takeAway(Component in) {
        JRootPane root = SwingUtilities.getRootPane(in);
        if (root != null) {
            for (Component each : root.getLayeredPane().getComponentsInLayer(JLayeredPane.POPUP_LAYER)) {
                if (each instanceof RefusalNote note) {
                    note.takeAway();
                }
            }
        }
    }

    private void takeAway() {
        if (getParent() instanceof JComponent over) {
            over.remove(this);
            over.repaint(getBounds());
        }
    }

    /** As high as the words need at the width there is. */
    private Dimension size(JLayeredPane over) {
        int width = Math.min(WIDTH, over.getWidth());
        setSize(width, LINES * getFontMetrics(getFont()).getHeight());
        doLayout();
        return new Dimension(width, Math.max(getPreferredSize().height, getHeight() / LINES));
    }

    /** Beneath a small component, above it where there is no room; at the top of what is seen of a large one. */
    private static Rectangle place(JComponent at, JLayeredPane over, Dimension size) {
        Rectangle seen = SwingUtilities.convertRectangle(at, at.getVisibleRect(), over);
        int below = seen.y + seen.height + Spacing.TIGHT;
        int beside = below + size.height <= over.getHeight() ? below : seen.y - size.height - Spacing.TIGHT;
        int y = seen.height <= 2 * size.height ? beside : seen.y + Spacing.APART;
        int x = Math.min(seen.x, over.getWidth() - size.width);
        return new Rectangle(Math.max(0, x), Math.max(0, y), size.width, size.height);
    }

    @Override
    protected void paintBorder(Graphics graphics) {
        super.paintBorder(graphics);
        graphics.setColor(Ink.fault());
        graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
}
