package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.EmptyState;
import org.taperwright.workbench.ui.Spacing;

/**
 * One design: its definition on the left, and on the right, live, what follows from it. Every change is a named edit on
 * the desk; dragging and held arrows only preview until they are released.
 */
public final class DesignPanel extends JPanel {
    private static final String SHOWN = "shown";
    private static final String EMPTY = "empty";
    private static final int DEFINITION_WIDTH = 388;

    private final transient OpenDesign open;
    private final transient Subscription changes;
    private final CardLayout cards = new CardLayout();

    /** Makes the panel on a desk. */
    public DesignPanel(Desk desk) {
        setName("designPanel");
        setLayout(cards);
        open = new OpenDesign(desk);
        ViewedLevel level = new ViewedLevel();
        Results results = new Results(desk, open);
        JPanel shown = new JPanel(new BorderLayout());
        DesignHeader header = new DesignHeader(desk, open, results);
        header.setBorder(Spacing.around(Spacing.NEAR));
        shown.add(header, BorderLayout.NORTH);
        shown.add(split(new DefinitionPane(open, level), desk, results, level), BorderLayout.CENTER);
        CautionLine caution = new CautionLine();
        caution.setBorder(Spacing.around(Spacing.TIGHT, Spacing.APART));
        shown.add(caution, BorderLayout.SOUTH);
        add(shown, SHOWN);
        add(
                new EmptyState(
                        "design.empty",
                        "No design is open",
                        "Choose a design in the library, or begin with a new one.",
                        List.of(newDesign(desk))),
                EMPTY);
        changes = desk.onChange(snapshot -> header.refresh());
        setTransferHandler(new DesignDrop(desk));
        open.onShown(now -> cards.show(this, now.shown().isPresent() ? SHOWN : EMPTY));
        open.begin();
    }

    /** Stops listening to the desk; for panels that are thrown away. */
    public void close() {
        changes.close();
        open.close();
    }

    @Override
    public boolean requestFocusInWindow() {
        return find(this, "design.tipDiameter.text")
                .map(Component::requestFocusInWindow)
                .orElse(false);
    }

    private JSplitPane split(DefinitionPane definition, Desk desk, Results results, ViewedLevel level) {
        ResultsPane pane = new ResultsPane(desk, open, results, level, this::go);
        JScrollPane scroll = new JScrollPane(pane);
        scroll.setName("design.results.scroll");
        scroll.setBorder(Spacing.around(Spacing.NEAR, Spacing.APART));
        scroll.getVerticalScrollBar().setUnitIncrement(2 * Spacing.APART);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, definition, scroll);
        split.setName("design.split");
        split.setBorder(null);
        split.setResizeWeight(0.12);
        split.setDividerLocation(DEFINITION_WIDTH);
        scroll.setMinimumSize(new Dimension(300, 200));
        return split;
    }

    private static Action newDesign(Desk desk) {
        return new AbstractAction("New design") {
            @Override
            public void actionPerformed(ActionEvent event) {
                ThingId id = ThingId.fresh();
                desk.edit("Add design", List.of(new Change.Put(id, NewDesign.standard())));
                desk.select(id);
            }
        };
    }

    private void go(Fault fault) {
        find(this, FieldPlace.of(fault.where()).component()).ifPresent(field -> {
            if (field instanceof JComponent component) {
                component.scrollRectToVisible(new java.awt.Rectangle(component.getSize()));
            }
            field.requestFocusInWindow();
        });
    }

    private static Optional<Component> find(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (name.equals(child.getName())) {
                return Optional.of(child);
            }
            Optional<Component> inner = child instanceof Container container ? find(container, name) : Optional.empty();
            if (inner.isPresent()) {
                return inner;
            }
        }
        return Optional.empty();
    }
}
