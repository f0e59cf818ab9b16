package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.sweep.Amount;
import org.taperwright.mechanics.comparison.sweep.DesignParameter;
import org.taperwright.mechanics.comparison.sweep.DesignParameters;
import org.taperwright.mechanics.comparison.sweep.Sweep;
import org.taperwright.mechanics.comparison.sweep.SweepPoint;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.XyPlot;

/** Metrics of one design along one of its parameters, each over its value for the design as it is. */
final class SweepPane extends JPanel {
    private static final int COUNT = 17;
    private static final int FIELD = 150;

    private final transient Desk desk;
    private final ChoiceField<Member> design =
            new ChoiceField<>("comparison.sweep.design", "Design to sweep", List.of(), Member::name);
    private final ChoiceField<DesignParameter> parameter =
            new ChoiceField<>("comparison.sweep.parameter", "Parameter to sweep", List.of(), DesignParameter::label);
    private final XyPlot plot = new XyPlot("comparison.sweep.plot", "Sweep");
    private final Set<String> shown = new TreeSet<>(Set.of("flexibility", "cutting", "fracture-torque"));
    private transient Optional<Sweep> sweep = Optional.empty();

    SweepPane(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setName("comparison.sweep");
        setOpaque(false);
        design.onCommit(member -> parameters());
        parameter.onCommit(chosen -> forget());
        JButton run = new JButton("Sweep");
        run.setName("comparison.sweep.run");
        run.setToolTipText("Computes " + COUNT + " designs along the parameter, in the background");
        run.addActionListener(event -> run());
        JButton metrics = new JButton("Metrics…");
        metrics.setName("comparison.sweep.metrics");
        metrics.addActionListener(event -> menu().show(metrics, 0, metrics.getHeight()));
        design.setPreferredSize(new Dimension(FIELD, design.getPreferredSize().height));
        parameter.setPreferredSize(new Dimension(FIELD, parameter.getPreferredSize().height));
        JPanel row = new JPanel(new WrappingRow(Spacing.NEAR));
        row.setOpaque(false);
        row.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        row.add(design);
        row.add(parameter);
        row.add(run);
        row.add(metrics);
        add(row, BorderLayout.NORTH);
        add(plot, BorderLayout.CENTER);
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
        if (!after.equals(before) || parameter.getItemCount() == 0) {
            parameters();
        }
    }

    private void parameters() {
        Object before = parameter.getSelectedItem();
        chosen().ifPresent(member -> {
            List<DesignParameter> all = DesignParameters.of(member.design().orElseThrow(), member.alloys());
            parameter.setChoices(all);
            all.stream()
                    .filter(each ->
                            before instanceof DesignParameter old && old.id().equals(each.id()))
                    .findFirst()
                    .or(() -> all.stream().findFirst())
                    .ifPresent(parameter::setValue);
        });
        forget();
    }

    private Optional<Member> chosen() {
        return Optional.ofNullable((Member) design.getSelectedItem());
    }

    private void forget() {
        sweep = Optional.empty();
        draw();
    }

    private void run() {
        Optional<Member> member = chosen();
        if (member.isPresent() && parameter.getSelectedItem() instanceof DesignParameter swept) {
            plot.setRemark("computing");
            desk.compute(
                    this,
                    "Sweep of " + swept.label() + ", " + member.get().name(),
                    progress -> Sweep.of(
                            member.get().design().orElseThrow(),
                            member.get().alloys(),
                            swept,
                            COUNT,
                            Metrics.all(),
                            progress),
                    this::deliver);
        }
    }

    private void deliver(Outcome<Sweep> outcome) {
        plot.setRemark(
                outcome instanceof Outcome.Failed<Sweep> failed
                        ? failed.reason()
                        : outcome instanceof Outcome.Cancelled<Sweep> ? "stopped" : "");
        if (outcome instanceof Outcome.Current<Sweep> current) {
            sweep = Optional.of(current.value());
            draw();
        }
    }

    private JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        for (Metric metric : Metrics.all()) {
            JCheckBoxMenuItem item = new JCheckBoxMenuItem(metric.label(), shown.contains(metric.id()));
            item.addActionListener(event -> {
                if (item.isSelected()) {
                    shown.add(metric.id());
                } else {
                    shown.remove(metric.id());
                }
                draw();
            });
            menu.add(item);
        }
        return menu;
    }

    private void draw() {
        List<Plot.Curve> curves = new ArrayList<>();
        List<Plot.Rule> rules = new ArrayList<>();
        sweep.ifPresent(swept -> {
            for (Metric metric : Metrics.all()) {
                if (shown.contains(metric.id())) {
                    curve(swept, metric, new SeriesLook(curves.size())).ifPresent(curves::add);
                }
            }
            if (swept.parameter() instanceof Amount) {
                rules.add(new Plot.Rule(
                        "as it is", Plot.Run.UPRIGHT, swept.here().setting().place()));
            }
        });
        String title = sweep.map(swept -> swept.parameter().label()).orElse("Press Sweep to compute");
        plot.setPlot(new Plot(
                Plot.Axis.of(title, sweep.map(swept -> swept.parameter().unit()).orElse("")),
                Plot.Axis.of("Over the design as it is", ""),
                curves,
                List.of(),
                rules));
    }

    private static Optional<Plot.Curve> curve(Sweep swept, Metric metric, SeriesLook look) {
        double here = swept.here().value(metric).orElse(0);
        if (!(here > 0)) {
            return Optional.empty();
        }
        List<Plot.Spot> spots = new ArrayList<>();
        for (SweepPoint point : swept.points()) {
            point.value(metric)
                    .ifPresent(value -> spots.add(new Plot.Spot(point.setting().place(), value / here)));
        }
        return Optional.of(new Plot.Curve(metric.label(), look, Plot.Style.LINE_AND_SPOTS, spots));
    }
}
