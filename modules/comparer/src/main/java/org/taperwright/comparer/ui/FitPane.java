package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.measured.AlloyFits;
import org.taperwright.mechanics.measured.FitResult;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Spacing;

/** Fits chosen constants of a design's alloy to its measured curves, and shows the new alloy with all that is known of the fit. */
final class FitPane extends JPanel {
    private final transient Desk desk;
    private final transient Compared compared;
    private final transient List<MeasuredOn> measured;
    private final ChoiceField<Member> design;
    private final JPanel constants = new JPanel(new BorderLayout());
    private final Map<String, JCheckBox> boxes = new LinkedHashMap<>();
    private final JTextArea result = new JTextArea(18, 56);

    FitPane(Desk desk, Compared compared, List<MeasuredOn> measured) {
        super(new BorderLayout(Spacing.NEAR, Spacing.NEAR));
        this.desk = desk;
        this.compared = compared;
        this.measured = List.copyOf(measured);
        setName("comparison.fit");
        design = new ChoiceField<>(
                "comparison.fit.design", "Design whose alloy is fitted", compared.members(), Member::name);
        compared.members().stream()
                .filter(member -> !curves(member).isEmpty())
                .findFirst()
                .or(() -> compared.members().stream().findFirst())
                .ifPresent(design::setValue);
        design.onCommit(member -> offer());
        JButton run = new JButton("Fit");
        run.setName("comparison.fit.run");
        run.addActionListener(event -> run());
        result.setName("comparison.fit.result");
        result.setEditable(false);
        result.setLineWrap(true);
        result.setWrapStyleWord(true);
        JPanel top = new JPanel(new BorderLayout(Spacing.NEAR, Spacing.NEAR));
        top.add(design, BorderLayout.CENTER);
        top.add(run, BorderLayout.LINE_END);
        JScrollPane chosen = new JScrollPane(constants);
        chosen.setPreferredSize(new Dimension(280, 300));
        add(top, BorderLayout.NORTH);
        add(chosen, BorderLayout.LINE_START);
        add(new JScrollPane(result), BorderLayout.CENTER);
        offer();
    }

    private Optional<Assessment> assessment() {
        int place = compared.members().indexOf(design.getSelectedItem());
        return place < 0 ? Optional.empty() : compared.assessment(place);
    }

    private List<MeasuredCurve> curves(Member member) {
        List<MeasuredCurve> curves = new ArrayList<>();
        for (MeasuredOn each : measured) {
            if (each.design().equals(member.id()) && each.measured() instanceof MeasuredCurve curve) {
                curves.add(curve);
            }
        }
        return curves;
    }

    private void offer() {
        constants.removeAll();
        boxes.clear();
        FormPane form = new FormPane("comparison.fit.constants");
        assessment().ifPresent(known -> {
            form.heading(known.alloy().label());
            for (AlloyConstant constant : AlloyConstant.uncertain(known.alloy())) {
                String unit = constant.unit().isEmpty() ? "" : " " + constant.unit();
                JCheckBox box = new JCheckBox(constant.label());
                box.setName("comparison.fit." + constant.name());
                box.setToolTipText("Now " + Shown.number(constant.value()) + unit + ", within "
                        + Shown.band(constant.band()) + unit);
                boxes.put(constant.name(), box);
                form.wide(box);
            }
        });
        constants.add(form, BorderLayout.CENTER);
        result.setText(
                "Choose the constants to fit; each stays within its band.\nBending and twisting curves count; turns to "
                        + "fracture hang on other constants.");
        revalidate();
        repaint();
    }

    private void run() {
        if (!(design.getSelectedItem() instanceof Member member)) {
            return;
        }
        List<String> chosen = boxes.entrySet().stream()
                .filter(each -> each.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
        List<MeasuredCurve> curves = curves(member);
        assessment().ifPresent(known -> {
            Alloy alloy = known.alloy();
            result.setText("Fitting…");
            desk.compute(
                    this,
                    "Fit of " + alloy.label(),
                    progress -> AlloyFits.of(known.design(), alloy, chosen, curves, progress),
                    this::deliver);
        });
    }

    private void deliver(Outcome<FitResult> outcome) {
        if (outcome instanceof Outcome.Current<FitResult> current) {
            result.setText(
                    current.value() instanceof FitResult.Fitted fitted
                            ? FitWords.of(fitted.fit())
                            : ((FitResult.Refused) current.value())
                                    .faults().stream().map(Fault::sentence).collect(Collectors.joining("\n")));
        } else {
            result.setText(outcome instanceof Outcome.Failed<FitResult> failed ? failed.reason() : "Stopped.");
        }
        result.setCaretPosition(0);
    }
}
