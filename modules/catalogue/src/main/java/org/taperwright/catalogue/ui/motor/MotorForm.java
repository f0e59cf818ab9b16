package org.taperwright.catalogue.ui.motor;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FaultList;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.Written;
import org.taperwright.workbench.ui.WrittenField;

/** Every field of a motor; each field entered is one edit by name. */
final class MotorForm extends JPanel {
    private static final Window NOTHING = new Window(0, 0);

    private final transient Desk desk;
    private final NameField name = new NameField("motor.name", "Name");
    private final NameField maker = new NameField("motor.maker", "Maker");
    private final WrittenField<Window> speed =
            new WrittenField<>("motor.speed", "Speed", Written.range(Unit.RPM, Unit.RPM), NOTHING);
    private final WrittenField<Window> torque = new WrittenField<>(
            "motor.torque", "Torque", Written.range(Unit.NEWTON_CENTIMETRE, Unit.NEWTON_MILLIMETRE), NOTHING);
    private final WrittenField<Optional<Window>> cutting = new WrittenField<>(
            "motor.cutting", "Cutting angle", Written.window(Unit.DEGREE, Unit.DEGREE), Optional.empty());
    private final WrittenField<Optional<Window>> releasing = new WrittenField<>(
            "motor.releasing", "Releasing angle", Written.window(Unit.DEGREE, Unit.DEGREE), Optional.empty());
    private final ChoiceField<Boolean> cordless = new ChoiceField<>(
            "motor.cordless", "Supply", List.of(true, false), yes -> yes ? "battery, cordless" : "mains, with a cord");
    private final ChoiceField<Boolean> locator =
            new ChoiceField<>("motor.locator", "Apex locator", List.of(true, false), yes -> yes ? "linked" : "none");
    private final NameField.Lines note = new NameField.Lines("motor.note", "Note", 2);
    private final FaultList faults = new FaultList("motor.faults", "", where -> where);
    private transient Optional<ThingId> open = Optional.empty();

    MotorForm(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        setName("motor.form");
        name.onCommit(words -> change("Name", words, m -> with(m, words, m.maker(), m.note())));
        maker.onCommit(words -> change("Maker", words, m -> with(m, m.name(), words, m.note())));
        note.onCommit(words -> change("Note", words, m -> with(m, m.name(), m.maker(), words)));
        speed.onCommit(range ->
                change("Speed", speed.entry().getText(), m -> driving(m, range, m.torqueNmm(), m.reciprocation())));
        torque.onCommit(range ->
                change("Torque", torque.entry().getText(), m -> driving(m, m.speedRpm(), range, m.reciprocation())));
        cutting.onCommit(any -> angles("Cutting angle", cutting.entry().getText()));
        releasing.onCommit(any -> angles("Releasing angle", releasing.entry().getText()));
        cordless.onCommit(yes -> change("Supply", yes ? "battery" : "mains", m -> made(m, yes, m.apexLocator())));
        locator.onCommit(yes -> change("Apex locator", yes ? "linked" : "none", m -> made(m, m.cordless(), yes)));
        FormPane form = new FormPane("motor.fields");
        form.setBorder(Spacing.around(Spacing.NEAR));
        form.wide(faults)
                .row("Name", name, "What people call it")
                .row("Maker", maker, "Who makes it")
                .row("Speed", speed, "Speeds it can be set to, revolutions per minute, such as 100–1000")
                .row("Torque", torque, "Torque limits it can be set to, such as 0.5–5 N·cm")
                .row("Cutting angle", cutting, "Reciprocation: turns in which the edges cut; both angles or none")
                .row("Releasing angle", releasing, "Reciprocation: turns back; both angles or none")
                .row("Supply", cordless, "Whether it runs from a battery")
                .row("Apex locator", locator, "Whether an apex locator is linked")
                .row("Note", note, "Free text; nothing that could identify a patient");
        JScrollPane scroll = new JScrollPane(form);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
        faults.setVisible(false);
    }

    /** Shows a motor. */
    void show(ThingId id, Motor motor) {
        if (!open.equals(Optional.of(id))) {
            cutting.setValue(Optional.empty());
            releasing.setValue(Optional.empty());
        }
        open = Optional.of(id);
        name.setValue(motor.name());
        maker.setValue(motor.maker());
        speed.setValue(motor.speedRpm());
        torque.setValue(motor.torqueNmm());
        // an angle typed first stays until its fellow comes
        if (motor.reciprocation().isPresent()
                || cutting.value().isPresent() == releasing.value().isPresent()) {
            cutting.setValue(motor.reciprocation().map(Reciprocation::cuttingDeg));
            releasing.setValue(motor.reciprocation().map(Reciprocation::releasingDeg));
        }
        cordless.setValue(motor.cordless());
        locator.setValue(motor.apexLocator());
        note.setValue(motor.note());
        faults.setVisible(false);
    }

    private void angles(String field, String value) {
        Optional<Window> cut = cutting.value();
        Optional<Window> release = releasing.value();
        if (cut.isPresent() == release.isPresent()) {
            Optional<Reciprocation> both = cut.map(each -> new Reciprocation(each, release.orElseThrow()));
            change(field, value, m -> driving(m, m.speedRpm(), m.torqueNmm(), both));
        }
    }

    private void change(String field, String value, UnaryOperator<Motor> change) {
        open.flatMap(id -> desk.snapshot().thing(id, Motor.class)).ifPresent(before -> {
            Motor after = change.apply(before);
            String what = value.isBlank() ? "cleared" : "to " + value.strip();
            List<Fault> refused = after.equals(before)
                    ? List.of()
                    : desk.tryEdit(
                            field + " of " + before.name() + " " + what,
                            List.of(new Change.Put(open.orElseThrow(), after)));
            if (!refused.isEmpty()) {
                show(open.orElseThrow(), before);
                faults.setFaults(refused);
                faults.setVisible(true);
            }
        });
    }

    private static Motor with(Motor m, String name, String maker, String note) {
        return new Motor(
                name, maker, m.speedRpm(), m.torqueNmm(), m.reciprocation(), m.cordless(), m.apexLocator(), note);
    }

    private static Motor driving(Motor m, Window speed, Window torque, Optional<Reciprocation> angles) {
        return new Motor(m.name(), m.maker(), speed, torque, angles, m.cordless(), m.apexLocator(), m.note());
    }

    private static Motor made(Motor m, boolean cordless, boolean locator) {
        return new Motor(
                m.name(), m.maker(), m.speedRpm(), m.torqueNmm(), m.reciprocation(), cordless, locator, m.note());
    }
}
