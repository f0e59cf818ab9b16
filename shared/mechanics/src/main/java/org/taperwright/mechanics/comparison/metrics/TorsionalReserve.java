package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Spread;

/** Fully plastic torque at a tip bound 3 mm over a usual torque of shaping; it says nothing of any one canal. */
public final class TorsionalReserve extends SampledMetric {
    private static final Spread SHAPING = Spread.byRatio(8, 22);
    private static final LatinHypercube CUBE = LatinHypercube.of("shaping.torqueNmm");

    /** For the service loader. */
    public TorsionalReserve() {
        super(
                new Declaration(
                        "torsional-reserve",
                        "Torsional reserve at a bound tip",
                        MetricGroup.TORSION,
                        40,
                        "",
                        Direction.MORE,
                        Standing.ESTIMATE,
                        "Fully plastic torque, held 3 mm from the tip, over a usual torque of shaping.",
                        "Sand heap; shaping torque 8 to 22 N·mm: Peters and others, Int Endod J 2003;36:93 (from memory, medium confidence)"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        Sampled shaping = CUBE.sample(SHAPING.middle(), shares -> SHAPING.at(shares[0]));
        return assessment.twistingSpread().plasticTorqueNmm().over(shaping);
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().plasticTorqueNmm() / SHAPING.middle();
    }
}
