package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Strain amplitude of the outer fibre, d / (2 R), at the thickest level in the middle of a curve of 5 mm radius. */
public final class StrainInCurve extends DeclaredMetric {
    /** For the service loader. */
    public StrainInCurve() {
        super(new Declaration(
                "strain-in-curve",
                "Strain amplitude in a curve",
                MetricGroup.FATIGUE,
                30,
                "%",
                Direction.LESS,
                Standing.COMPUTED,
                "Strain amplitude of the outer fibre, d / (2 R), at the thickest level in the middle of a curve of 5 mm radius.",
                "Definition of Cheung and Darvell, Int Endod J 2007; 5 mm radius: common practice, no source"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.fatigue().strain() * 100);
    }
}
