package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.AlloyFit;
import org.taperwright.mechanics.measured.AlloyFits;
import org.taperwright.mechanics.measured.FitConstants;
import org.taperwright.mechanics.measured.FitResult;
import org.taperwright.mechanics.measured.Measured;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/** Fits chosen constants of a design's alloy to its measured curves, and shows the new alloy with all that is known of the fit. */
final class FitPane extends JPanel {
    private static final int LONGEST_STEM = 60;

    private final transient Desk desk;
    private final transient Compared compared;
    private final transient List<MeasuredOn> measured;
    private final ChoiceField<Member> design;
    private final JPanel constants = new JPanel(new BorderLayout());
    private final Map<String, JCheckBox> boxes = new LinkedHashMap<>();
    private final JTextArea result = new JTextArea(18, 56);
    private final JTextField name = new JTextField();
    private final JButton keep = new JButton("Keep this alloy");
    private final JCheckBox copy = new JCheckBox("with a copy of the design in it");
    private transient Optional<AlloyFit> fit = Optional.empty();

    FitPane(Desk desk, Compared compared, List<MeasuredOn> measured) {
        super(new BorderLayout(Spacing.NEAR, Spacing.NEAR));
        this.desk = desk;
        this.compared = compared;
        this.measured = List.copyOf(measured);
        setName("comparison.fit");
        design = new ChoiceField<>(
                "comparison.fit.design", "Design whose alloy is fitted", compared.members(), Member::name);
        compared.members().stream()
                .filter(member -> !measured(member).isEmpty())
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
        add(keeping(), BorderLayout.SOUTH);
        offer();
    }

    private JPanel keeping() {
        name.setName("comparison.fit.name");
        name.setColumns(28);
        copy.setName("comparison.fit.copy");
        copy.setToolTipText(
                "Adds a copy of the design that is made of the new alloy; the design itself stays as it is");
        keep.setName("comparison.fit.keep");
        keep.setToolTipText(
                "Adds the fitted alloy to the library with all that is known of the fit; undo takes it back");
        keep.addActionListener(event -> keep());
        keep.setEnabled(false);
        JLabel label = new JLabel("Name");
        label.setLabelFor(name);
        JPanel row = new JPanel(new WrappingRow(Spacing.NEAR));
        row.add(label);
        row.add(name);
        row.add(keep);
        row.add(copy);
        return row;
    }

    private Optional<Assessment> assessment() {
        int place = compared.members().indexOf(design.getSelectedItem());
        return place < 0 ? Optional.empty() : compared.assessment(place);
    }

    private List<Measured> measured(Member member) {
        return measured.stream()
                .filter(each -> each.design().equals(member.id()))
                .map(MeasuredOn::measured)
                .toList();
    }

    private void offer() {
        constants.removeAll();
        boxes.clear();
        FormPane form = new FormPane("comparison.fit.constants");
        assessment().ifPresent(known -> {
            form.wide(new Prose(known.alloy().label(), Ink::quiet, true));
            form.heading("By curves");
            FitConstants.ofCurves(known.alloy()).forEach(constant -> form.wide(box(constant)));
            form.heading("By turns to fracture");
            FitConstants.ofLife(known.alloy()).forEach(constant -> form.wide(box(constant)));
        });
        forget();
        constants.add(form, BorderLayout.CENTER);
        result.setText(
                "Choose the constants to fit; each stays within its band.\nThose of the stress law are fitted to bending and "
                        + "twisting curves, those of the strain-life law to turns to fracture.");
        revalidate();
        repaint();
    }

    private JCheckBox box(AlloyConstant constant) {
        String unit = constant.unit().isEmpty() ? "" : " " + constant.unit();
        JCheckBox box = new JCheckBox(constant.label());
        box.setName("comparison.fit." + constant.name());
        box.setToolTipText(
                "Now " + Shown.number(constant.value()) + unit + ", within " + Shown.band(constant.band()) + unit);
        boxes.put(constant.name(), box);
        return box;
    }

    private void forget() {
        fit = Optional.empty();
        keep.setEnabled(false);
    }

    /** Puts the fitted alloy into the library, and if wanted a copy of the design in it: one edit. */
    private void keep() {
        Optional<Assessment> known = assessment();
        String called = name.getText().strip();
        if (fit.isEmpty() || known.isEmpty()) {
            return;
        }
        if (called.isEmpty()) {
            told("Give the alloy a name first.");
            return;
        }
        Design of = known.get().design();
        ThingId id = readable(called);
        OwnAlloy alloy = OwnAlloy.of(fit.get(), called, of.name(), LocalDate.now(ZoneId.systemDefault()));
        List<Change> changes = new ArrayList<>(List.of(new Change.Put(id, alloy)));
        if (copy.isSelected()) {
            Design made = Designs.with(of)
                    .name(of.name() + ", " + called)
                    .alloy(id.value())
                    .design();
            changes.add(new Change.Put(ThingId.fresh(), made));
        }
        List<Fault> faults = desk.tryEdit("Keep alloy " + called, changes);
        told(
                faults.isEmpty()
                        ? "Kept in the library as \"" + called + "\"; every design can be made of it."
                                + (copy.isSelected() ? " So is a copy of the design in it." : "")
                        : faults.stream().map(Fault::sentence).collect(Collectors.joining("\n")));
        keep.setEnabled(!faults.isEmpty());
    }

    /** An identifier that tells the alloy by its name, for wherever a design is written out. */
    private ThingId readable(String called) {
        String plain =
                called.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String stem = plain.isEmpty() ? "alloy" : plain.substring(0, Math.min(LONGEST_STEM, plain.length()));
        for (int number = 1; ; number++) {
            ThingId id = new ThingId(number == 1 ? stem : stem + "-" + number);
            if (desk.snapshot().entry(id).isEmpty() && Alloys.find(id.value()).isEmpty()) {
                return id;
            }
        }
    }

    private void told(String words) {
        result.setText(words + "\n\n" + fit.map(FitWords::of).orElse(""));
        result.setCaretPosition(0);
    }

    private void run() {
        if (!(design.getSelectedItem() instanceof Member member)) {
            return;
        }
        List<String> chosen = boxes.entrySet().stream()
                .filter(each -> each.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
        List<Measured> data = measured(member);
        assessment().ifPresent(known -> {
            Alloy alloy = known.alloy();
            result.setText("Fitting…");
            desk.compute(
                    this,
                    "Fit of " + alloy.label(),
                    progress -> AlloyFits.of(known.design(), alloy, chosen, data, progress),
                    this::deliver);
        });
    }

    private void deliver(Outcome<FitResult> outcome) {
        forget();
        if (outcome instanceof Outcome.Current<FitResult> current) {
            if (current.value() instanceof FitResult.Fitted fitted) {
                fit = Optional.of(fitted.fit());
                name.setText(fitted.fit().alloy().label());
                keep.setEnabled(true);
            }
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
