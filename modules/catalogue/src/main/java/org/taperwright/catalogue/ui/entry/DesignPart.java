package org.taperwright.catalogue.ui.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javax.swing.JLabel;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.SizeChip;

/** The part of an instrument's form that is about its design: size, taper, lengths, and how far the design is known. */
final class DesignPart {
    private static final double PER_MM = 100;
    private static final String ASSUMED =
            "The section, pitch and tip are assumed from the type, not measured: every value "
                    + "computed from them is an estimate with a wider band.";
    private static final String RISING =
            "The taper changes along the blade; open the design in the Design window to see it.";

    private final EditedInstrument edited;
    private final QuantityField size =
            new QuantityField("instrument.size", "Size", new QuantityKind("", 1, 400, 5, 0, 0, Map.of()));
    private final QuantityField taper = new QuantityField("instrument.taper", "Taper", QuantityKind.taper());
    private final QuantityField length =
            new QuantityField("instrument.length", "Length", QuantityKind.length(5, 60, 1));
    private final QuantityField workingPart =
            new QuantityField("instrument.workingPart", "Working part", QuantityKind.length(2, 40, 1));
    private final JLabel designation = new JLabel(" ");
    private final JLabel diameters = new JLabel(" ");
    private final JLabel make = new JLabel(" ");
    private final ChoiceField<Boolean> known = new ChoiceField<>(
            "instrument.assumed", "Design", List.of(false, true), assumed -> assumed ? "assumed by type" : "known");
    private final Prose remark = new Prose("", Ink::unusual, true);

    DesignPart(EditedInstrument edited) {
        this.edited = edited;
        designation.setName("instrument.designation");
        diameters.setName("instrument.diameters");
        make.setName("instrument.make");
        remark.setName("instrument.assumed.remark");
        size.onCommit(value -> design(
                "Size",
                IsoSizes.text((int) Math.round(value)),
                design -> Designs.with(design)
                        .tipDiameterMm(Math.round(value) / PER_MM)
                        .design()));
        taper.onCommit(value -> design("Taper", Shown.taper(value), design -> tapered(design, value)));
        length.onCommit(value -> design(
                "Length",
                Shown.mm(value),
                design -> Designs.with(design).lengthMm(value).design()));
        workingPart.onCommit(value -> design("Working part", Shown.mm(value), design -> worked(design, value)));
        known.onCommit(assumed -> edited.change(
                "Design",
                assumed ? "assumed by type" : "known",
                instrument -> instrument.draft().designAssumed(assumed).instrument()));
    }

    void addTo(FormPane form) {
        form.heading("Size and design")
                .row("Designation", designation, "Size, taper and colour by ISO 3630-1")
                .row("Diameters", diameters, "At the tip and at the end of the working part")
                .row("Size", size, "Diameter at the tip in hundredths of a millimetre")
                .row("Taper", taper, "Taper over the working part, mm per mm")
                .row("Length", length, "From the tip to the handle: 21, 25, 28, 31 mm or the maker's own")
                .row("Working part", workingPart, "16 mm by the standard; shorter for coronal flaring")
                .row("Section, alloy", make, "Next to the tip; change it in the Design window")
                .row("Design", known, "Whether the design is known or assumed from the type")
                .wide(remark);
    }

    void show(Instrument instrument) {
        Design design = instrument.design();
        boolean plain = design.taper().size() == 1;
        Designation read = Designation.of(design);
        String colour = read.colour().map(SizeColour::word).orElse("no colour in the standard");
        designation.setText(read.text() + ", " + colour);
        diameters.setText(String.format(
                Locale.ROOT,
                "%.2f, %.2f mm at 0, %s",
                design.diameterMm(0),
                design.diameterMm(design.workingPartMm()),
                Shown.mm(design.workingPartMm())));
        designation.setIcon(new SizeChip(colour));
        designation.setToolTipText(designation.getText());
        make.setText(section(design) + ", "
                + Alloys.find(design.alloy()).map(Alloy::label).orElse(design.alloy()));
        make.setToolTipText(make.getText());
        size.setValue(instrument.size());
        taper.setValue(read.taper());
        taper.setEnabled(plain);
        length.setValue(design.lengthMm());
        workingPart.setValue(design.workingPartMm());
        workingPart.setEnabled(plain);
        known.setValue(instrument.designAssumed());
        remark.setText(instrument.designAssumed() ? ASSUMED : plain ? "" : RISING);
        remark.setVisible(!remark.getText().isEmpty());
    }

    private void design(String field, String value, UnaryOperator<Design> change) {
        edited.change(
                field,
                value,
                instrument -> instrument
                        .draft()
                        .design(change.apply(instrument.design()))
                        .instrument());
    }

    private static Design tapered(Design design, double taper) {
        return Designs.with(design)
                .taper(List.of(new TaperSegment(0, design.workingPartMm(), taper)))
                .shaftDiameterMm(OptionalDouble.empty())
                .design();
    }

    private static Design worked(Design design, double workingPart) {
        return Designs.with(design)
                .taper(List.of(
                        new TaperSegment(0, workingPart, design.taper().get(0).taper())))
                .shaftDiameterMm(OptionalDouble.empty())
                .design();
    }

    private static String section(Design design) {
        return design.sections().stream()
                .findFirst()
                .map(station -> station.shape().family())
                .map(family -> Sections.family(family).map(SectionFamily::label).orElse(family))
                .orElse("no section");
    }
}
