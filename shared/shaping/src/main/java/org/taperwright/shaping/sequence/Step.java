package org.taperwright.shaping.sequence;

import java.util.Optional;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

/**
 * One step of a sequence.
 *
 * @param instrument the catalogue entry used
 * @param depthMm how far the tip goes, measured as working lengths are: from the coronal reference point, mm
 * @param motion how it is moved
 * @param speedRpm speed set on the motor, rev/min; absent by hand
 * @param torqueNmm torque limit set on the motor, N mm; absent by hand
 * @param strokes number of strokes
 * @param note free text
 */
public record Step(
        ThingId instrument,
        double depthMm,
        Motion motion,
        Optional<Double> speedRpm,
        Optional<Double> torqueNmm,
        int strokes,
        String note) {}
