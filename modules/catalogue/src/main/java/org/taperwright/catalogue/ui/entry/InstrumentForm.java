package org.taperwright.catalogue.ui.entry;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.InstrumentChecks;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.FaultList;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.Spacing;

/** Every field of one instrument; each field entered is one edit by name. */
final class InstrumentForm extends JPanel {
    private static final Map<String, String> PLACES = Map.of(
            "name", "Name",
            "usesAllowed", "Uses allowed",
            "design.lengthMm", "Length",
            "speedRpm", "Speed",
            "torqueNmm", "Torque",
            "reciprocation", "Angles",
            "design.motion", "Motion",
            "drive", "Drive",
            "supply.expiry", "Expiry");

    private final transient EditedInstrument edited;
    private final NameField name = new NameField("instrument.name", "Name");
    private final NameField type = new NameField("instrument.type", "Type");
    private final NameField maker = new NameField("instrument.maker", "Maker");
    private final NameField line = new NameField("instrument.line", "Line");
    private final NameField.Lines note = new NameField.Lines("instrument.note", "Note", 3);
    private final PictureField picture;
    private final transient DesignPart design;
    private final transient NumbersPart numbers;
    private final transient DrivePart drive;
    private final transient SupplyPart supply;
    private final FaultList faults =
            new FaultList("instrument.faults", "Nothing to remark.", where -> PLACES.getOrDefault(where, where));
    private transient Optional<ThingId> open = Optional.empty();

    InstrumentForm(Desk desk) {
        super(new BorderLayout());
        setName("instrument.form");
        edited = new EditedInstrument(desk, this::refuse);
        picture = new PictureField(desk);
        design = new DesignPart(edited);
        numbers = new NumbersPart(desk);
        drive = new DrivePart(edited);
        supply = new SupplyPart(edited);
        name.onCommit(words ->
                edited.change("Name", words, now -> now.draft().name(words).instrument()));
        type.onCommit(words ->
                edited.change("Type", words, now -> now.draft().type(words).instrument()));
        maker.onCommit(words ->
                edited.change("Maker", words, now -> now.draft().maker(words).instrument()));
        line.onCommit(words ->
                edited.change("Line", words, now -> now.draft().line(words).instrument()));
        note.onCommit(words ->
                edited.change("Note", words, now -> now.draft().note(words).instrument()));
        picture.onCommit(chosen -> edited.change(
                "Picture",
                chosen.isPresent() ? "another" : "",
                now -> now.draft().picture(chosen).instrument()));
        JScrollPane scroll = new JScrollPane(form());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    private FormPane form() {
        FormPane form = new FormPane("instrument.fields");
        form.setBorder(Spacing.around(Spacing.NEAR));
        form.wide(faults)
                .heading("Instrument")
                .row("Name", name, "What people call it")
                .row("Type", type, "The trade's type, such as K-type file")
                .row("Maker", maker, "Who makes it")
                .row("Line", line, "The maker's line");
        design.addTo(form);
        numbers.addTo(form);
        drive.addTo(form);
        supply.addTo(form);
        form.heading("Picture and note")
                .row("Picture", picture, "")
                .row("Note", note, "Free text; nothing that could identify a patient")
                .wide(new CautionLine());
        return form;
    }

    /** Shows an instrument. */
    void show(ThingId id, Instrument instrument) {
        boolean another = !open.equals(Optional.of(id));
        open = Optional.of(id);
        edited.open(open);
        if (another) {
            drive.forget();
        }
        name.setValue(instrument.name());
        type.setValue(instrument.type());
        maker.setValue(instrument.maker());
        line.setValue(instrument.line());
        note.setValue(instrument.note());
        picture.show(instrument.picture());
        design.show(instrument);
        numbers.show(instrument);
        drive.show(instrument);
        supply.show(instrument.supply());
        faults.setFaults(InstrumentChecks.check(instrument, LocalDate.now()));
        revalidate();
    }

    /** What a person typed cannot be: it is said, and the fields show again what stands. */
    private void refuse(List<Fault> why) {
        edited.now().ifPresent(now -> show(open.orElseThrow(), now));
        faults.setFaults(why);
        faults.scrollRectToVisible(new java.awt.Rectangle(0, 0, 1, faults.getHeight()));
    }
}
