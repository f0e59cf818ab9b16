package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.JPanel;
import org.taperwright.mechanics.work.Fault;

/**
 * What is impossible or unusual, why, and what was expected: impossible things first. Enter or a click on one goes to
 * its field.
 */
public final class FaultList extends JPanel {
    private final String none;
    private final transient UnaryOperator<String> places;
    private transient Consumer<Fault> go = fault -> {};

    /**
     * @param none what stands here when there is nothing to remark
     * @param places turns a fault's field in the words of the JSON form into the words of the window
     */
    public FaultList(String name, String none, UnaryOperator<String> places) {
        super(new GridBagLayout());
        this.none = none;
        this.places = places;
        setName(name);
        setOpaque(false);
        setFaults(List.of());
    }

    /** Receives the fault whose field a person wants to see. */
    public FaultList onGo(Consumer<Fault> listener) {
        go = listener;
        return this;
    }

    /** Shows these faults in place of the former ones. */
    public void setFaults(List<Fault> faults) {
        removeAll();
        GridBagConstraints at = new GridBagConstraints();
        at.gridx = 0;
        at.weightx = 1;
        at.fill = GridBagConstraints.HORIZONTAL;
        at.anchor = GridBagConstraints.PAGE_START;
        at.insets = new Insets(0, 0, Spacing.TIGHT, 0);
        if (faults.isEmpty()) {
            JPanel line = new JPanel(new BorderLayout());
            line.setOpaque(false);
            Prose prose = new Prose(none, Ink::quiet, false);
            prose.setName(getName() + ".none");
            line.add(prose);
            add(line, at);
        }
        faults.stream()
                .sorted(java.util.Comparator.comparing(Fault::weight))
                .forEach(fault -> add(new FaultRow(fault, places.apply(fault.where()), () -> go.accept(fault)), at));
        revalidate();
        repaint();
    }
}
