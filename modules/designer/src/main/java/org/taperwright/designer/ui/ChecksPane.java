package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.ui.FaultList;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/** Checks: what about the design is impossible or unusual, and why. */
final class ChecksPane extends JPanel {
    private static final int LOWEST = 64;
    private static final int HIGHEST = 150;

    private final FaultList list =
            new FaultList("design.checks.list", "Nothing impossible or unusual was found.", FieldPlace::words);
    private final FormPane inside;
    private final Prose trouble = new Prose("", Ink::fault, false);

    ChecksPane(Consumer<Fault> go) {
        super(new BorderLayout(0, Spacing.TIGHT));
        setName("design.checks");
        setOpaque(false);
        list.onGo(go);
        trouble.setName("design.checks.trouble");
        trouble.setVisible(false);
        inside = new FormPane("design.checks.inside");
        inside.wide(trouble).wide(list);
        JScrollPane scroll = new JScrollPane(inside);
        scroll.setBorder(null);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(new Heading("Checks"), BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
    }

    /** As high as what it says, within limits that leave the numbers their room. */
    @Override
    public Dimension getPreferredSize() {
        int wanted = super.getMinimumSize().height + inside.getPreferredSize().height;
        return new Dimension(super.getPreferredSize().width, Math.max(LOWEST, Math.min(HIGHEST, wanted)));
    }

    /** Shows faults, and why nothing newer was computed where that is so. */
    void show(List<Fault> faults, String why) {
        list.setFaults(faults);
        trouble.setText(why);
        trouble.setVisible(!why.isEmpty());
        revalidate();
    }
}
