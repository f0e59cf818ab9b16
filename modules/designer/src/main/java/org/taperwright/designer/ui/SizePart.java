package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;

/** Size and lengths: quick entry by size and taper, or each diameter and length by itself. */
final class SizePart {
    private static final double FARTHEST = 40;

    private final OpenDesign open;
    private final ChoiceField<Integer> size =
            new ChoiceField<>("design.quick.size", "Size", IsoSizes.sizes(), IsoSizes::text).withIcons(SizePart::chip);
    private final QuantityField quickTaper = new QuantityField("design.quick.taper", "Taper", QuantityKind.taper());
    private final JButton fill = new JButton("Fill in");
    private final QuantityField tip =
            new QuantityField("design.tipDiameter", "Tip diameter", QuantityKind.diameter(0.05, 1.4, 0.01));
    private final QuantityField workingPart = new QuantityField(
            "design.workingPart", "Working part", QuantityKind.length(Tapers.SHORTEST, FARTHEST, 0.5));
    private final JCheckBox shaftAsBlade = new JCheckBox("As the blade ends");
    private final QuantityField shaft =
            new QuantityField("design.shaft", "Shaft diameter", QuantityKind.diameter(0.1, 3, 0.05));
    private final QuantityField length =
            new QuantityField("design.length", "Length to the handle", QuantityKind.length(5, 60, 1));

    SizePart(FormPane form, OpenDesign open) {
        this.open = open;
        fill.setName("design.quick.fill");
        fill.setToolTipText("Set the tip diameter and one constant taper over the whole working part");
        fill.addActionListener(event -> fillIn());
        shaftAsBlade.setName("design.shaftAsBlade");
        shaftAsBlade.setOpaque(false);
        shaftAsBlade.addActionListener(event -> chooseShaft());
        bind(tip, "Tip diameter", this::tipDiameter);
        bind(workingPart, "Working part", this::workingPart);
        bind(
                shaft,
                "Shaft diameter",
                mm -> design -> Designs.with(design)
                        .shaftDiameterMm(OptionalDouble.of(mm))
                        .design());
        bind(length, "Length", mm -> design -> Designs.with(design).lengthMm(mm).design());
        JPanel quick = new JPanel(new BorderLayout(Spacing.TIGHT, 0));
        quick.setName("design.quick");
        quick.setOpaque(false);
        quick.add(size, BorderLayout.LINE_START);
        quick.add(quickTaper, BorderLayout.CENTER);
        quick.add(fill, BorderLayout.LINE_END);
        form.heading("Size")
                .row("Size and taper", quick, "Quick entry: a size by ISO 3630-1 and one taper fill the diameters")
                .row("Tip diameter", tip, "Diameter of the blade's cone projected to the very tip")
                .row("Working part", workingPart, "Length of the fluted part from the tip")
                .row("Shaft", shaftAsBlade, "The shaft beyond the working part keeps the diameter the blade ends with")
                .row("Shaft diameter", shaft, "Diameter of the round shaft beyond the working part")
                .row("Length", length, "From the tip to the handle: 21, 25, 28 or 31 mm by ISO 3630-1");
        open.onShown(shown -> shown.shown().ifPresent(this::show));
    }

    private void bind(
            QuantityField field, String what, DoubleFunction<java.util.function.UnaryOperator<Design>> change) {
        field.onPreview(value -> open.tryOut(change.apply(value)));
        field.onCommit(value -> open.edit(what + " to " + field.kind().write(value), change.apply(value)));
    }

    private java.util.function.UnaryOperator<Design> tipDiameter(double mm) {
        return design -> Designs.with(design).tipDiameterMm(mm).design();
    }

    private java.util.function.UnaryOperator<Design> workingPart(double mm) {
        return design -> Designs.with(design)
                .taper(Tapers.withEnd(design.taper(), design.taper().size() - 1, mm, FARTHEST))
                .design();
    }

    private void fillIn() {
        int chosen = size.getItemAt(Math.max(0, size.getSelectedIndex()));
        double taper = quickTaper.value();
        open.edit(
                "Fill in " + Shown.designation(chosen, taper),
                design -> Designs.with(design)
                        .tipDiameterMm(chosen / 100.0)
                        .constantTaper(taper)
                        .design());
    }

    private void chooseShaft() {
        if (shaftAsBlade.isSelected()) {
            open.edit(
                    "Shaft as the blade ends",
                    design -> Designs.with(design)
                            .shaftDiameterMm(OptionalDouble.empty())
                            .design());
        } else {
            open.edit(
                    "Shaft of its own diameter",
                    design -> Designs.with(design)
                            .shaftDiameterMm(OptionalDouble.of(rounded(design.diameterMm(design.workingPartMm()))))
                            .design());
        }
    }

    private void show(Design design) {
        tip.setValue(design.tipDiameterMm());
        workingPart.setValue(design.workingPartMm());
        shaftAsBlade.setSelected(design.shaftDiameterMm().isEmpty());
        shaft.setValue(design.shaftDiameterMm().orElse(rounded(design.diameterMm(design.workingPartMm()))));
        shaft.setEnabled(design.shaftDiameterMm().isPresent());
        length.setValue(design.lengthMm());
        int nearest = (int) Math.round(design.tipDiameterMm() * 100);
        if (IsoSizes.sizes().contains(nearest) && !size.isPopupVisible()) {
            size.setValue(nearest);
        }
        if (!open.trying()) {
            quickTaper.setValue(
                    design.taper().isEmpty() ? 0.02 : design.taper().get(0).taper());
        }
    }

    private static double rounded(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }

    private static Optional<Icon> chip(int size) {
        return IsoSizes.colour(size).map(colour -> new SizeChip(colour));
    }
}
