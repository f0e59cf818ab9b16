package org.taperwright.catalogue.ui.entry;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Written;
import org.taperwright.workbench.ui.WrittenField;

/** The part of an instrument's form that is about how it is held and driven, as its maker states. */
final class DrivePart {
    private static final int MOST_USES = 1000;

    private final ChoiceField<Drive> drive = new ChoiceField<>(
            "instrument.drive",
            "Drive",
            List.of(Drive.values()),
            held -> held == Drive.HAND ? "hand (handle)" : "powered (latch)");
    private final ChoiceField<Motion> motion =
            new ChoiceField<>("instrument.motion", "Motion", List.of(Motion.values()), Motion::word);
    private final WrittenField<Optional<Window>> speed =
            window("instrument.speed", "Speed", Written.window(Unit.RPM, Unit.RPM));
    private final WrittenField<Optional<Window>> torque =
            window("instrument.torque", "Torque", Written.window(Unit.NEWTON_CENTIMETRE, Unit.NEWTON_MILLIMETRE));
    private final WrittenField<Optional<Window>> cutting =
            window("instrument.cutting", "Cutting angle", Written.window(Unit.DEGREE, Unit.DEGREE));
    private final WrittenField<Optional<Window>> releasing =
            window("instrument.releasing", "Releasing angle", Written.window(Unit.DEGREE, Unit.DEGREE));
    private final WrittenField<Integer> uses =
            new WrittenField<>("instrument.uses", "Uses allowed", Written.count(MOST_USES), 0);

    DrivePart(EditedInstrument edited) {
        drive.onCommit(held -> edited.change(
                "Drive",
                held.word(),
                instrument -> instrument.draft().drive(held).instrument()));
        motion.onCommit(moved -> edited.change(
                "Motion",
                moved.word(),
                instrument -> instrument
                        .draft()
                        .design(Designs.with(instrument.design()).motion(moved).design())
                        .instrument()));
        speed.onCommit(window -> edited.change(
                "Speed",
                speed.entry().getText(),
                instrument -> instrument.draft().speedRpm(window).instrument()));
        torque.onCommit(window -> edited.change(
                "Torque",
                torque.entry().getText(),
                instrument -> instrument.draft().torqueNmm(window).instrument()));
        cutting.onCommit(window -> angles(edited, "Cutting angle", cutting));
        releasing.onCommit(window -> angles(edited, "Releasing angle", releasing));
        uses.onCommit(count -> edited.change(
                "Uses allowed",
                count.toString(),
                instrument -> instrument.draft().usesAllowed(count).instrument()));
    }

    private static WrittenField<Optional<Window>> window(String name, String what, Written<Optional<Window>> written) {
        return new WrittenField<>(name, what, written, Optional.empty());
    }

    /** Angles are kept once both are given, and go when both are cleared. */
    private void angles(EditedInstrument edited, String field, WrittenField<Optional<Window>> entered) {
        Optional<Window> cut = cutting.value();
        Optional<Window> release = releasing.value();
        if (cut.isPresent() == release.isPresent()) {
            Optional<Reciprocation> angles = cut.map(each -> new Reciprocation(each, release.orElseThrow()));
            edited.change(
                    field,
                    entered.entry().getText(),
                    instrument -> instrument.draft().reciprocation(angles).instrument());
        }
    }

    void addTo(FormPane form) {
        form.heading("Drive, as the maker states")
                .row("Drive", drive, "Held by hand, or driven by a motor through a latch")
                .row("Motion", motion, "The motion it is meant for")
                .row("Speed", speed, "Speed window, revolutions per minute, such as 250–400")
                .row("Torque", torque, "Torque window, such as 2–3 N·cm")
                .row("Cutting angle", cutting, "Reciprocation: turn in which the edges cut; both angles or none")
                .row("Releasing angle", releasing, "Reciprocation: turn back; both angles or none")
                .row("Uses allowed", uses, "How many uses the maker allows; 0 when not stated");
    }

    void show(Instrument instrument) {
        drive.setValue(instrument.drive());
        motion.setValue(instrument.design().motion());
        speed.setValue(instrument.speedRpm());
        torque.setValue(instrument.torqueNmm());
        // an angle typed first stays until its fellow comes
        if (instrument.reciprocation().isPresent()
                || cutting.value().isPresent() == releasing.value().isPresent()) {
            cutting.setValue(instrument.reciprocation().map(Reciprocation::cuttingDeg));
            releasing.setValue(instrument.reciprocation().map(Reciprocation::releasingDeg));
        }
        uses.setValue(instrument.usesAllowed());
        boolean powered = instrument.drive() == Drive.POWERED;
        speed.setEnabled(powered);
        torque.setEnabled(powered);
        cutting.setEnabled(powered && instrument.design().motion() == Motion.RECIPROCATION);
        releasing.setEnabled(cutting.isEnabled());
    }

    /** Forgets an angle typed without its fellow, when another instrument comes. */
    void forget() {
        cutting.setValue(Optional.empty());
        releasing.setValue(Optional.empty());
    }
}
