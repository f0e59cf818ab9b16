package org.taperwright.shaping.sequence;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

/**
 * An instrument that works in the canal.
 *
 * @param instrument the catalogue entry used
 * @param depthMm how far the tip goes, from the coronal reference point, mm
 * @param motion how it is moved
 * @param speedRpm speed set on the motor, rev/min; absent by hand
 * @param torqueNmm torque limit set on the motor, N mm; absent by hand
 * @param angles angles set on the motor for reciprocation; where absent those are taken that instrument and motor allow
 * @param strokes number of strokes
 * @param note free text
 */
public record InstrumentStep(
        ThingId instrument,
        double depthMm,
        Motion motion,
        Optional<Double> speedRpm,
        Optional<Double> torqueNmm,
        Optional<SetAngles> angles,
        int strokes,
        String note)
        implements Step {
    /** A step with no angles set. */
    public InstrumentStep(
            ThingId instrument,
            double depthMm,
            Motion motion,
            Optional<Double> speedRpm,
            Optional<Double> torqueNmm,
            int strokes,
            String note) {
        this(instrument, depthMm, motion, speedRpm, torqueNmm, Optional.empty(), strokes, note);
    }

    @Override
    public String word() {
        return "instrument";
    }

    @Override
    public Optional<ThingId> uses() {
        return Optional.of(instrument);
    }

    @Override
    public double depthMm(double workingLengthMm) {
        return depthMm;
    }

    @Override
    public InstrumentStep at(double depth) {
        return new InstrumentStep(instrument, depth, motion, speedRpm, torqueNmm, angles, strokes, note);
    }

    @Override
    public InstrumentStep deeper(double mm) {
        return at(depthMm + mm);
    }

    @Override
    public InstrumentStep using(UnaryOperator<ThingId> other) {
        return new InstrumentStep(other.apply(instrument), depthMm, motion, speedRpm, torqueNmm, angles, strokes, note);
    }

    @Override
    public Optional<InstrumentStep> worked(double workingLengthMm, Motion meant) {
        return Optional.of(this);
    }

    /** The same step, moved another way. */
    public InstrumentStep withMotion(Motion other) {
        return new InstrumentStep(instrument, depthMm, other, speedRpm, torqueNmm, angles, strokes, note);
    }

    /** The same step at another speed, rev/min; empty by hand. */
    public InstrumentStep withSpeed(Optional<Double> rpm) {
        return new InstrumentStep(instrument, depthMm, motion, rpm, torqueNmm, angles, strokes, note);
    }

    /** The same step with another torque limit, N mm; empty by hand. */
    public InstrumentStep withTorque(Optional<Double> nmm) {
        return new InstrumentStep(instrument, depthMm, motion, speedRpm, nmm, angles, strokes, note);
    }

    /** The same step in another number of strokes. */
    public InstrumentStep withStrokes(int count) {
        return new InstrumentStep(instrument, depthMm, motion, speedRpm, torqueNmm, angles, count, note);
    }

    /** The same step with other angles of reciprocation. */
    public InstrumentStep withAngles(Optional<SetAngles> others) {
        return new InstrumentStep(instrument, depthMm, motion, speedRpm, torqueNmm, others, strokes, note);
    }
}
