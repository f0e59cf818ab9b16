package org.taperwright.comparer.ui;

import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** The designs compared, in their order: reordered, made the datum, opened and taken out by mouse or by keyboard. */
final class MemberStrip extends JPanel {
    /** What a person asks for. */
    interface Orders {
        /** Moves a design by places. */
        void move(Member member, int places);

        /** Makes a design the datum. */
        void datum(Member member);

        /** Opens a design in its own window. */
        void open(Member member);

        /** Takes a design out of the comparison. */
        void remove(Member member);
    }

    private final transient Orders orders;
    private Optional<ThingId> focused = Optional.empty();

    MemberStrip(Orders orders) {
        super(new ShrinkingRow(Spacing.NEAR));
        this.orders = orders;
        setName("comparison.designs");
        setOpaque(false);
        getAccessibleContext().setAccessibleName("Designs compared");
    }

    /** Shows the members of a comparison. */
    void show(SavedComparison comparison, List<Member> members, Function<ThingId, SeriesLook> looks) {
        Optional<ThingId> keep = focused;
        removeAll();
        boolean removable = members.size() > ComparisonEdits.LEAST;
        for (Member member : members) {
            boolean datum = member.id().equals(comparison.datum());
            MemberChip chip = new MemberChip(member, looks.apply(member.id()), datum, removable);
            listen(chip);
            add(chip);
            if (keep.equals(Optional.of(member.id()))) {
                SwingUtilities.invokeLater(chip::requestFocusInWindow);
            }
        }
        revalidate();
        repaint();
    }

    private void listen(MemberChip chip) {
        Member member = chip.member();
        key(chip, "alt LEFT", () -> orders.move(member, -1));
        key(chip, "alt RIGHT", () -> orders.move(member, 1));
        key(chip, "D", () -> orders.datum(member));
        key(chip, "ENTER", () -> orders.open(member));
        key(chip, "DELETE", () -> orders.remove(member));
        key(chip, "LEFT", () -> focusBeside(chip, -1));
        key(chip, "RIGHT", () -> focusBeside(chip, 1));
        chip.setComponentPopupMenu(menu(member));
        chip.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                focused = Optional.of(member.id());
                chip.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                // a chip that is replaced while it has the focus hands it to its successor
                if (chip.isDisplayable() && !event.isTemporary()) {
                    focused = Optional.empty();
                }
                chip.repaint();
            }
        });
        MouseAdapter mouse = new ChipMouse(chip);
        chip.addMouseListener(mouse);
        chip.addMouseMotionListener(mouse);
    }

    private JPopupMenu menu(Member member) {
        JPopupMenu menu = new JPopupMenu();
        item(menu, "Open design", "ENTER", () -> orders.open(member));
        item(menu, "Make datum", "D", () -> orders.datum(member));
        item(menu, "Move left", "alt LEFT", () -> orders.move(member, -1));
        item(menu, "Move right", "alt RIGHT", () -> orders.move(member, 1));
        menu.addSeparator();
        item(menu, "Take out of the comparison", "DELETE", () -> orders.remove(member));
        return menu;
    }

    private static void item(JPopupMenu menu, String words, String key, Runnable action) {
        JMenuItem item = new JMenuItem(words);
        item.setName("comparison.menu." + words);
        item.setAccelerator(KeyStroke.getKeyStroke(key));
        item.addActionListener(event -> action.run());
        menu.add(item);
    }

    private static void key(MemberChip chip, String key, Runnable action) {
        chip.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        chip.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    private void focusBeside(MemberChip chip, int places) {
        int at = getComponentZOrder(chip) + places;
        if (at >= 0 && at < getComponentCount()) {
            getComponent(at).requestFocusInWindow();
        }
    }

    /** A press on the cross takes the design out, two open it, a drag past a neighbour's middle trades places. */
    private final class ChipMouse extends MouseAdapter {
        private final MemberChip chip;

        ChipMouse(MemberChip chip) {
            this.chip = chip;
        }

        @Override
        public void mousePressed(MouseEvent event) {
            chip.requestFocusInWindow();
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            if (!SwingUtilities.isLeftMouseButton(event)) {
                return;
            }
            if (chip.onCross(event.getX())) {
                orders.remove(chip.member());
            } else if (event.getClickCount() == 2) {
                orders.open(chip.member());
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            int x = event.getX() + chip.getX();
            int from = getComponentZOrder(chip);
            int to = 0;
            for (int i = 0; i < getComponentCount(); i++) {
                if (i != from && x > getComponent(i).getX() + getComponent(i).getWidth() / 2) {
                    to++;
                }
            }
            boolean away = event.getX() < 0 || event.getX() >= chip.getWidth();
            if (SwingUtilities.isLeftMouseButton(event) && away && to != from) {
                orders.move(chip.member(), to - from);
            }
        }
    }
}
