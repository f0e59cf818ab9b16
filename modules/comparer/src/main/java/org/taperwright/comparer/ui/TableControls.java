package org.taperwright.comparer.ui;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import org.taperwright.library.store.MetricRows;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Spacing;

/** Sorts, pins, hides and reorders the table's rows, and shows what differs in the definitions. */
final class TableControls extends JPanel {
    private static final int FIELD = 130;

    private final transient Consumer<TableView> viewed;
    private final transient BiConsumer<String, MetricRows> saved;
    private final ChoiceField<TableView.Definition> definition = new ChoiceField<>(
            "comparison.definition",
            "Definitions in the table",
            Arrays.asList(TableView.Definition.values()),
            TableView.Definition::words);
    private final ChoiceField<Optional<Member>> order = new ChoiceField<>(
            "comparison.order",
            "Order of the metrics",
            List.of(Optional.empty()),
            member -> member.map(each -> "Furthest first: " + each.name()).orElse("In groups"));
    private final JCheckBox hiddenToo = new JCheckBox("Hidden too");
    private final JButton pin = button("comparison.pin", "Pin", this::pin);
    private final JButton hide = button("comparison.hide", "Hide", this::hideOrShow);
    private final JButton up = button("comparison.up", "Up", () -> move(-1));
    private final JButton down = button("comparison.down", "Down", () -> move(1));
    private transient TableView view = TableView.USUAL;
    private transient Optional<Metric> selected = Optional.empty();

    /**
     * @param viewed receives a view that is only looked at
     * @param saved receives the name of an edit and the rows to save with the comparison
     */
    TableControls(Consumer<TableView> viewed, BiConsumer<String, MetricRows> saved) {
        super(new WrappingRow(Spacing.NEAR));
        this.viewed = viewed;
        this.saved = saved;
        setName("comparison.controls");
        setOpaque(false);
        setBorder(Spacing.around(Spacing.TIGHT, Spacing.NEAR));
        definition.setValue(view.definition());
        definition.setPreferredSize(new Dimension(FIELD, definition.getPreferredSize().height));
        definition.onCommit(chosen -> look(view.showing(chosen)));
        order.setValue(Optional.empty());
        order.setPreferredSize(new Dimension(FIELD, order.getPreferredSize().height));
        order.onCommit(chosen -> look(view.sortedBy(chosen.map(Member::id))));
        hiddenToo.setName("comparison.hiddenToo");
        hiddenToo.setOpaque(false);
        hiddenToo.addActionListener(event -> look(view.showingHidden(hiddenToo.isSelected())));
        pin.setToolTipText("Puts the selected metric above the others, or back into its group (P)");
        hide.setToolTipText("Takes the selected metric off the table, or brings it back (H)");
        up.setToolTipText("Moves a pinned metric up (Alt+Up)");
        down.setToolTipText("Moves a pinned metric down (Alt+Down)");
        add(order);
        add(definition);
        add(pin);
        add(hide);
        add(up);
        add(down);
        add(hiddenToo);
        select(Optional.empty());
    }

    private static JButton button(String name, String words, Runnable action) {
        JButton button = new JButton(words);
        button.setName(name);
        button.addActionListener(event -> action.run());
        return button;
    }

    /** Shows a comparison's members and saved rows. */
    void show(List<Member> members, MetricRows rows) {
        List<Optional<Member>> choices = new ArrayList<>(List.of(Optional.empty()));
        members.forEach(member -> choices.add(Optional.of(member)));
        order.setChoices(choices);
        Optional<Member> sorted = members.stream()
                .filter(member -> view.furthest().equals(Optional.of(member.id())))
                .findFirst();
        order.setValue(sorted);
        view = view.with(rows).sortedBy(sorted.map(Member::id));
        hiddenToo.setText(
                rows.hidden().isEmpty()
                        ? "Hidden too"
                        : "Hidden too (" + rows.hidden().size() + ")");
        hiddenToo.setEnabled(!rows.hidden().isEmpty());
        viewed.accept(view);
        select(selected);
    }

    /** Follows the selection of a metric. */
    void select(Optional<Metric> metric) {
        selected = metric;
        boolean pinned = metric.filter(this::pinned).isPresent();
        boolean hidden = metric.filter(this::hidden).isPresent();
        pin.setEnabled(metric.isPresent());
        pin.setText(pinned ? "Unpin" : "Pin");
        hide.setEnabled(metric.isPresent());
        hide.setText(hidden ? "Show" : "Hide");
        up.setEnabled(pinned);
        down.setEnabled(pinned);
    }

    private boolean pinned(Metric metric) {
        return view.rows().pinned().contains(metric.id());
    }

    private boolean hidden(Metric metric) {
        return view.rows().hidden().contains(metric.id());
    }

    private void look(TableView next) {
        view = next;
        viewed.accept(view);
    }

    /** Pins the selected metric, or puts it back. */
    void pin() {
        selected.ifPresent(metric -> saved.accept(
                (pinned(metric) ? "Unpin " : "Pin ") + metric.label(),
                view.rows().pin(metric.id(), !pinned(metric))));
    }

    /** Hides the selected metric, or shows it again. */
    void hideOrShow() {
        selected.ifPresent(metric -> saved.accept(
                (hidden(metric) ? "Show " : "Hide ") + metric.label(),
                view.rows().hide(metric.id(), !hidden(metric))));
    }

    /** Moves the selected metric among the pinned ones. */
    void move(int places) {
        selected.filter(this::pinned).ifPresent(metric -> {
            MetricRows moved = view.rows().move(metric.id(), places);
            if (!moved.equals(view.rows())) {
                saved.accept("Move " + metric.label() + (places < 0 ? " up" : " down"), moved);
            }
        });
    }
}
