package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * Strain amplitude of the outer fibre where it is greatest, turning in a plain tube of 60 degrees and 5 mm radius:
 * half the diameter times the curvature.
 */
public final class CurveStrain extends DeclaredMetric {
    /** For the service loader. */
    public CurveStrain() {
        super(new Declaration(
                "strain-in-curve",
                "Strain in a standard curve",
                MetricGroup.FATIGUE,
                30,
                "%",
                Direction.LESS,
                Standing.COMPUTED,
                "Strain amplitude of the outer fibre where it is greatest, turning in a plain tube of 60 degrees"
                        + " and 5 mm radius: half the diameter times the curvature.",
                "Definition d / 2R of Cheung and Darvell, Int Endod J 2007 (abstract read)"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(100 * assessment.fatigue().strainAmplitude());
    }
}
