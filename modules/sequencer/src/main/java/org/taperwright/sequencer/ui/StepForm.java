package org.taperwright.sequencer.ui;

import java.awt.CardLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.SetAngles;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;

/** The fields of the selected step. */
final class StepForm extends JPanel {
    /** What a person enters for a step. */
    interface Entries {
        /** Tries a depth while it is stepped, mm. */
        void tryDepth(double depthMm);

        /** Sets the depth, mm. */
        void depth(double depthMm);

        /** Sets the motion. */
        void motion(Motion motion);

        /** Sets the speed, rpm; absent when not set. */
        void speed(Optional<Double> rpm);

        /** Sets the torque limit, N mm; absent when not set. */
        void torque(Optional<Double> torqueNmm);

        /** Sets the angles of reciprocation; absent when left to instrument and motor. */
        void angles(Optional<SetAngles> angles);

        /** Sets the number of strokes. */
        void strokes(int strokes);

        /** Puts another step in the place of one that is no instrument's work. */
        void between(String field, String value, Step step);
    }

    private static final double NMM_PER_NCM = 10;
    private static final String WORK = "work";
    private static final String BETWEEN = "between";

    private final CardLayout cards = new CardLayout();
    private final BetweenForm between;
    private transient SetAngles shownAngles = SetAngles.USUAL;

    private final QuantityField depth = new QuantityField("step.depth", "Depth", QuantityKind.length(0, 40, 0.5));
    private final ChoiceField<Motion> motion =
            new ChoiceField<>("step.motion", "Motion", List.of(Motion.values()), Motion::word);
    private final QuantityField speed = new QuantityField(
            "step.speed", "Speed", new QuantityKind("rpm", 0, 2000, 10, 0, 0, Map.of("rev/min", 1.0, "/min", 1.0)));
    private final QuantityField torque = new QuantityField(
            "step.torque",
            "Torque limit",
            new QuantityKind(
                    "N·cm", 0, 20, 0.1, 1, 2, Map.of("N·mm", 0.1, "Nmm", 0.1, "Ncm", 1.0, "g·cm", 0.00980665)));
    private final QuantityField cutting =
            new QuantityField("step.cutting", "Cutting angle", QuantityKind.degrees(0, 3600, 10));
    private final QuantityField releasing =
            new QuantityField("step.releasing", "Releasing angle", QuantityKind.degrees(0, 3600, 10));
    private final QuantityField strokes =
            new QuantityField("step.strokes", "Strokes", new QuantityKind("", 0, 99, 1, 0, 0, Map.of()));

    StepForm(Entries entries) {
        setLayout(cards);
        setName("step.form");
        setOpaque(false);
        depth.onPreview(entries::tryDepth).onCommit(entries::depth);
        motion.onCommit(entries::motion);
        speed.onCommit(value -> entries.speed(value == 0 ? Optional.empty() : Optional.of(value)));
        torque.onCommit(value -> entries.torque(value == 0 ? Optional.empty() : Optional.of(value * NMM_PER_NCM)));
        cutting.onCommit(value -> entries.angles(angles(value, shownAngles.releasingDeg())));
        releasing.onCommit(value -> entries.angles(angles(shownAngles.cuttingDeg(), value)));
        strokes.onCommit(value -> entries.strokes((int) Math.round(value)));
        between = new BetweenForm(entries);
        add(between, BETWEEN);
        add(
                new FormPane("step.fields")
                        .row("Depth", depth, "How far the tip goes, from the coronal reference point")
                        .row("Motion", motion, "How the instrument is moved")
                        .row("Speed", speed, "Speed set on the motor; 0 leaves it unset")
                        .row("Torque limit", torque, "Torque limit set on the motor; 0 leaves it unset")
                        .row(
                                "Cutting angle",
                                cutting,
                                "Turn in which the edges cut; 0 leaves both angles to instrument and motor")
                        .row("Releasing angle", releasing, "Turn back; 0 leaves both angles to instrument and motor")
                        .row("Strokes", strokes, "Number of strokes"),
                WORK);
        cards.show(this, WORK);
    }

    private static Optional<SetAngles> angles(double cuttingDeg, double releasingDeg) {
        return cuttingDeg == 0 || releasingDeg == 0
                ? Optional.empty()
                : Optional.of(new SetAngles(cuttingDeg, releasingDeg));
    }

    /** Offers instruments that a patency or recapitulation may use. */
    void offer(List<FileChoice> files) {
        between.offer(files);
    }

    /** Shows a step; without one the fields cannot be used. */
    void show(Optional<Step> step, Optional<Instrument> instrument) {
        boolean powered = instrument.map(used -> used.drive() == Drive.POWERED).orElse(true);
        List.of(depth, motion, strokes).forEach(field -> field.setEnabled(step.isPresent()));
        List.of(cutting, releasing).forEach(field -> field.setEnabled(false));
        List.of(speed, torque).forEach(field -> field.setEnabled(step.isPresent() && powered));
        step.ifPresent(any -> {
            if (!(any instanceof InstrumentStep shown)) {
                between.show(any, instrument);
                cards.show(this, BETWEEN);
                return;
            }
            cards.show(this, WORK);
            depth.setValue(shown.depthMm());
            motion.setValue(shown.motion());
            speed.setValue(shown.speedRpm().orElse(0.0));
            torque.setValue(shown.torqueNmm().orElse(0.0) / NMM_PER_NCM);
            strokes.setValue(shown.strokes());
            shownAngles = shown.angles().orElse(SetAngles.USUAL);
            cutting.setValue(shown.angles().map(SetAngles::cuttingDeg).orElse(0.0));
            releasing.setValue(shown.angles().map(SetAngles::releasingDeg).orElse(0.0));
            List.of(cutting, releasing)
                    .forEach(field -> field.setEnabled(powered && shown.motion() == Motion.RECIPROCATION));
        });
    }
}
