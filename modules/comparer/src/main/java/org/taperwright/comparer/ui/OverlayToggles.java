package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.Icon;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** Which designs the overlays show, and the legend: each with its dash and marker, so that colour never stands alone. */
final class OverlayToggles extends JPanel {
    private final transient Runnable changed;
    private final Set<ThingId> hidden = new HashSet<>();
    private transient List<Member> shown = List.of();
    private transient List<SeriesLook> looks = List.of();

    OverlayToggles(Runnable changed) {
        super(new WrappingRow(Spacing.NEAR));
        this.changed = changed;
        setName("comparison.overlays");
        setOpaque(false);
        setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
    }

    /** Offers the members. */
    void show(List<Member> members, List<SeriesLook> newLooks) {
        if (members.equals(shown) && newLooks.equals(looks)) {
            return;
        }
        shown = List.copyOf(members);
        looks = List.copyOf(newLooks);
        removeAll();
        for (int i = 0; i < members.size(); i++) {
            add(entry(members.get(i), looks.get(i)));
        }
        revalidate();
        repaint();
    }

    /** Whether the overlays leave a design out. */
    boolean hides(Member member) {
        return hidden.contains(member.id());
    }

    private JPanel entry(Member member, SeriesLook look) {
        JCheckBox box = new JCheckBox(member.name(), !hides(member));
        box.setName("comparison.overlay." + member.id().value());
        box.setOpaque(false);
        // text at a fractional scale can be a little wider than it was measured
        box.setMargin(new Insets(2, 2, 2, 2 + Spacing.NEAR));
        box.setToolTipText("Shows " + member.name() + " in sections, along the blade and in the curves");
        box.addActionListener(event -> {
            if (box.isSelected()) {
                hidden.remove(member.id());
            } else {
                hidden.add(member.id());
            }
            changed.run();
        });
        JPanel entry = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.TIGHT, 0));
        entry.setOpaque(false);
        entry.add(new JLabel(new Sample(look)));
        entry.add(box);
        return entry;
    }

    /** A stretch of the line with its marker. */
    private record Sample(SeriesLook look) implements Icon {
        private static final int WIDTH = 26;
        private static final int HEIGHT = 12;

        @Override
        public void paintIcon(Component of, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(look.colour());
            g.setStroke(look.stroke(1.8f));
            g.draw(new Line2D.Double(x, y + HEIGHT / 2.0, x + WIDTH, y + HEIGHT / 2.0));
            g.fill(AffineTransform.getTranslateInstance(x + WIDTH / 2.0, y + HEIGHT / 2.0)
                    .createTransformedShape(look.marker(7)));
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return WIDTH;
        }

        @Override
        public int getIconHeight() {
            return HEIGHT;
        }
    }
}
