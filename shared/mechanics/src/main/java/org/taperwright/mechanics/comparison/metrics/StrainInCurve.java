package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Greatest strain amplitude of the surface in the usual tube, by constants of elasticity alone. */
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
                "Strain amplitude of the surface, d / (2 R) times what turning flutes make of it, where greatest in 60° on 5 mm.",
                "Cheung and Darvell, Int Endod J 2007, times elastic factors of the twisted bar (not yet confirmed by a solid "
                        + "model); 60° on 5 mm: common practice, no source"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.fatigue().strain() * 100);
    }
}
