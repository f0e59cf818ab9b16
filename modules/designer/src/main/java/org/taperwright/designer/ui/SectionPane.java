package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** The section at any level, chosen by slider or number. */
final class SectionPane extends JPanel {
    private static final int STEPS_PER_MM = 10;

    private final Desk desk;
    private final ViewedLevel level;
    private final SectionDrawing drawing = new SectionDrawing();
    private final JSlider slider = new JSlider(0, 16 * STEPS_PER_MM);
    private final QuantityField field =
            new QuantityField("design.level", "Level shown", QuantityKind.length(0, 40, 0.5));
    private transient Optional<Design> shown = Optional.empty();
    private transient SeriesLook look = new SeriesLook(0);

    SectionPane(Desk desk, OpenDesign open, ViewedLevel level) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.desk = desk;
        this.level = level;
        setName("design.section.pane");
        setOpaque(false);
        slider.setName("design.level.slider");
        slider.getAccessibleContext().setAccessibleName("Level shown, tenths of a millimetre from the tip");
        slider.setToolTipText("Distance from the tip of the section shown");
        slider.setOpaque(false);
        slider.addChangeListener(event -> level.set(slider.getValue() / (double) STEPS_PER_MM));
        field.onPreview(level::set);
        field.onCommit(level::set);
        JPanel choice = new JPanel(new BorderLayout(Spacing.NEAR, 0));
        choice.setOpaque(false);
        JLabel name = new JLabel("Level");
        name.setLabelFor(field.entry());
        choice.add(name, BorderLayout.LINE_START);
        choice.add(slider, BorderLayout.CENTER);
        choice.add(field, BorderLayout.LINE_END);
        add(drawing, BorderLayout.CENTER);
        add(choice, BorderLayout.SOUTH);
        level.onChange(mm -> refresh());
        open.onShown(this::show);
        refresh();
    }

    private void show(OpenDesign open) {
        shown = open.shown();
        look = open.look();
        shown.ifPresent(design ->
                slider.setMaximum((int) Math.ceil(Math.max(1, Math.min(40, design.workingPartMm())) * STEPS_PER_MM)));
        refresh();
    }

    private void refresh() {
        double mm = level.mm();
        field.setValue(mm);
        if (!slider.getValueIsAdjusting()) {
            slider.getModel().setValue((int) Math.round(mm * STEPS_PER_MM));
        }
        if (shown.isEmpty()) {
            drawing.showNone("");
            return;
        }
        Design design = shown.get();
        drawing.markOutdated();
        desk.compute(
                drawing,
                "Draw the section of " + design.name(),
                progress -> SectionAtLevel.of(design, mm),
                outcome -> deliver(outcome));
    }

    private void deliver(Outcome<Optional<SectionAtLevel>> outcome) {
        if (outcome instanceof Outcome.Current<Optional<SectionAtLevel>> current) {
            current.value()
                    .ifPresentOrElse(
                            section -> drawing.show(section, look),
                            () -> drawing.showNone("This section cannot be drawn; see the checks."));
        } else if (outcome instanceof Outcome.Failed<Optional<SectionAtLevel>> failed) {
            drawing.showNone("Not drawn: " + failed.reason());
        }
    }
}
