package org.taperwright.designer.ui;

import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.ParameterForm;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.Spacing;

/** The section at each station: its family with the parameters that the family declares, rounding and land. */
final class SectionPart {
    private static final QuantityKind LEVEL = QuantityKind.length(0, 40, 0.5);

    private final OpenDesign open;
    private final ViewedLevel level;
    private final ChoiceField<Integer> station =
            new ChoiceField<>("design.section.station", "Station", List.of(), this::stationWords);
    private final QuantityField at = new QuantityField("design.section.level", "Level of the section", LEVEL);
    private final ChoiceField<SectionFamily> family =
            new ChoiceField<>("design.section.family", "Section", Sections.families(), SectionFamily::label);
    private final ParameterForm parameters = new ParameterForm("design.section.parameters");
    private final OutlinePart outline;
    private final QuantityField rounding =
            new QuantityField("design.section.rounding", "Edge rounding", QuantityKind.shareOfDiameter(0, 0.2, 0.005));
    private final QuantityField land =
            new QuantityField("design.section.land", "Land width", QuantityKind.shareOfDiameter(0, 0.3, 0.01));
    private Optional<Design> shown = Optional.empty();
    private int chosen;

    SectionPart(FormPane form, OpenDesign open, ViewedLevel level) {
        this.open = open;
        this.level = level;
        outline = new OutlinePart(points -> open.edit(
                "Custom outline of " + points.size() + " points",
                shape(old ->
                        new SectionShape("custom", java.util.Map.of(), old.edgeRounding(), old.landWidth(), points))));
        station.onCommit(this::choose);
        family.onCommit(this::chooseFamily);
        bind(at, this::levelName, mm -> design -> atLevel(design, mm));
        parameters.onChange(this::parameter);
        bind(
                rounding,
                value -> "Edge rounding to "
                        + QuantityKind.shareOfDiameter(0, 1, 1).write(value),
                value -> shape(
                        old -> new SectionShape(old.family(), old.parameters(), value, old.landWidth(), old.points())));
        bind(
                land,
                value ->
                        "Land width to " + QuantityKind.shareOfDiameter(0, 1, 1).write(value),
                value -> shape(old ->
                        new SectionShape(old.family(), old.parameters(), old.edgeRounding(), value, old.points())));
        form.heading("Section")
                .row("Station", station, "Where along the blade the section below holds; between stations it blends")
                .row("", stationButtons(), "")
                .row("Level", at, "Distance of this station from the tip")
                .row("Family", family, "The kind of outline")
                .wide(parameters)
                .wide(outline)
                .row("Edge rounding", rounding, "Radius that rounds the cutting edges, in diameters")
                .row("Land width", land, "Width of the margin ground on each edge along the circle, in diameters");
        open.onShown(now -> now.shown().ifPresent(this::show));
    }

    private JPanel stationButtons() {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        row.setName("design.section.stations");
        row.setOpaque(false);
        row.add(button("Add", "Add a station further up the blade with the same section", this::add));
        row.add(javax.swing.Box.createHorizontalStrut(Spacing.TIGHT));
        row.add(button("Remove", "Take this station out", this::remove));
        return row;
    }

    private JButton button(String words, String explanation, Runnable action) {
        JButton button = new JButton(words);
        button.setName("design.section." + words.toLowerCase(java.util.Locale.ROOT));
        button.setToolTipText(explanation);
        button.addActionListener(event -> action.run());
        return button;
    }

    private void bind(QuantityField field, DoubleFunction<String> name, DoubleFunction<UnaryOperator<Design>> change) {
        field.onPreview(value -> open.tryOut(change.apply(value)));
        field.onCommit(value -> open.edit(name.apply(value), change.apply(value)));
    }

    private void show(Design design) {
        shown = Optional.of(design);
        chosen = Math.max(0, Math.min(chosen, design.sections().size() - 1));
        station.setChoices(IntStream.range(0, design.sections().size()).boxed().toList());
        station.setValue(chosen);
        if (design.sections().isEmpty()) {
            return;
        }
        SectionStation now = design.sections().get(chosen);
        at.setValue(now.levelMm());
        Optional<SectionFamily> known = Sections.family(now.shape().family());
        known.ifPresent(family::setValue);
        parameters.setParameters(
                known.map(SectionFamily::parameters).orElse(List.of()),
                now.shape().parameters());
        rounding.setValue(now.shape().edgeRounding());
        land.setValue(now.shape().landWidth());
        outline.show(now.shape());
    }

    private String stationWords(int index) {
        return shown.filter(design -> index < design.sections().size())
                .map(design -> design.sections().get(index))
                .map(here -> (index + 1) + ": " + LEVEL.write(here.levelMm()) + ", "
                        + Sections.family(here.shape().family())
                                .map(SectionFamily::label)
                                .orElse(here.shape().family()))
                .orElse("");
    }

    private void choose(int index) {
        chosen = index;
        shown.ifPresent(design -> {
            show(design);
            level.set(design.sections().get(index).levelMm());
        });
    }

    private String levelName(double mm) {
        return "Section " + (chosen + 1) + " at " + LEVEL.write(mm);
    }

    private Design atLevel(Design design, double mm) {
        SectionStation moved =
                new SectionStation(mm, design.sections().get(chosen).shape());
        return Designs.with(design)
                .sections(Rows.replaced(design.sections(), chosen, moved))
                .design();
    }

    private UnaryOperator<Design> shape(UnaryOperator<SectionShape> change) {
        return design -> {
            SectionStation old = design.sections().get(chosen);
            SectionStation changed = new SectionStation(old.levelMm(), change.apply(old.shape()));
            return Designs.with(design)
                    .sections(Rows.replaced(design.sections(), chosen, changed))
                    .design();
        };
    }

    private void chooseFamily(SectionFamily next) {
        open.edit("Section family to " + next.label().toLowerCase(java.util.Locale.UK), shape(old -> {
            if (next.id().equals("custom")) {
                return OutlinePart.traced(old);
            }
            return new SectionShape(
                    next.id(),
                    Sections.initialShape(next).parameters(),
                    old.edgeRounding(),
                    old.landWidth(),
                    List.of());
        }));
    }

    private void parameter(FamilyParameter parameter, double value, boolean done) {
        UnaryOperator<Design> change = shape(old -> {
            TreeMap<String, Double> values = new TreeMap<>(old.parameters());
            values.put(parameter.name(), value);
            return new SectionShape(old.family(), values, old.edgeRounding(), old.landWidth(), old.points());
        });
        if (done) {
            open.edit(parameter.label() + " to " + QuantityKind.of(parameter).write(value), change);
        } else {
            open.tryOut(change);
        }
    }

    private void add() {
        open.edit("Add a section station", design -> {
            SectionStation last = design.sections().get(design.sections().size() - 1);
            double end = design.workingPartMm();
            double where = last.levelMm() < end ? end : last.levelMm() + 1;
            List<SectionStation> more = new ArrayList<>(design.sections());
            more.add(new SectionStation(where, last.shape()));
            more.sort(Comparator.comparingDouble(SectionStation::levelMm));
            chosen = more.size() - 1;
            return Designs.with(design).sections(more).design();
        });
    }

    private void remove() {
        open.edit(
                "Remove section station " + (chosen + 1),
                design -> design.sections().size() > 1
                        ? Designs.with(design)
                                .sections(Rows.without(design.sections(), chosen))
                                .design()
                        : design);
    }
}
