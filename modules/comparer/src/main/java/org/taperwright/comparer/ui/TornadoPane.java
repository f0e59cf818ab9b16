package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.sweep.Tornado;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Spacing;

/** Which parameter of a design moves a metric most. */
final class TornadoPane extends JPanel {
    private static final int FIELD = 150;

    private final transient Desk desk;
    private final ChoiceField<Member> design =
            new ChoiceField<>("comparison.tornado.design", "Design to look at", List.of(), Member::name);
    private final ChoiceField<Metric> metric =
            new ChoiceField<>("comparison.tornado.metric", "Metric to look at", Metrics.all(), Metric::label);
    private final TornadoDrawing drawing = new TornadoDrawing();
    private transient Optional<Tornado> tornado = Optional.empty();

    TornadoPane(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setName("comparison.tornado");
        setOpaque(false);
        metric.setValue(MapAxes.USUAL.across());
        metric.onCommit(chosen -> draw());
        design.onCommit(member -> {
            tornado = Optional.empty();
            draw();
        });
        JButton run = new JButton("Move each parameter");
        run.setName("comparison.tornado.run");
        run.setToolTipText(
                "Moves each amount by a tenth either way and each choice to every other option, in the background");
        run.addActionListener(event -> run());
        design.setPreferredSize(new Dimension(FIELD, design.getPreferredSize().height));
        metric.setPreferredSize(new Dimension(FIELD, metric.getPreferredSize().height));
        JPanel row = new JPanel(new WrappingRow(Spacing.NEAR));
        row.setOpaque(false);
        row.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        row.add(design);
        row.add(metric);
        row.add(run);
        add(row, BorderLayout.NORTH);
        add(drawing, BorderLayout.CENTER);
        draw();
    }

    /** Offers the members. */
    void show(List<Member> members) {
        List<Member> present =
                members.stream().filter(member -> member.design().isPresent()).toList();
        Optional<Member> before = Optional.ofNullable((Member) design.getSelectedItem());
        design.setChoices(present);
        Optional<Member> after = present.stream()
                .filter(each ->
                        before.isPresent() && each.id().equals(before.get().id()))
                .findFirst()
                .or(() -> present.stream().findFirst());
        after.ifPresent(design::setValue);
        if (!after.equals(before)) {
            tornado = Optional.empty();
            draw();
        }
    }

    private void run() {
        if (design.getSelectedItem() instanceof Member member) {
            drawing.setRemark("computing");
            desk.compute(
                    this,
                    "What moves " + member.name(),
                    progress -> Tornado.of(member.design().orElseThrow(), member.alloys(), Metrics.all(), progress),
                    this::deliver);
        }
    }

    private void deliver(Outcome<Tornado> outcome) {
        drawing.setRemark(
                outcome instanceof Outcome.Failed<Tornado> failed
                        ? failed.reason()
                        : outcome instanceof Outcome.Cancelled<Tornado> ? "stopped" : "");
        if (outcome instanceof Outcome.Current<Tornado> current) {
            tornado = Optional.of(current.value());
            draw();
        }
    }

    private void draw() {
        if (metric.getSelectedItem() instanceof Metric chosen) {
            drawing.show(tornado, chosen);
        }
    }
}
