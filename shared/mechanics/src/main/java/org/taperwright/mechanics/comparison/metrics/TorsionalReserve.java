package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Spread;

/** Fully plastic torque at a tip bound 3 mm over a usual torque of shaping; it says nothing of any one canal. */
public final class TorsionalReserve extends DeclaredMetric {
    private static final Spread SHAPING = Spread.byRatio(8, 22);
    private static final LatinHypercube CUBE = new LatinHypercube(2);

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
    public Reading read(Assessment assessment) {
        double plastic = assessment.twisting().plasticTorqueNmm();
        Spread yield = Spread.even(
                assessment.alloy().yieldBand().low() / assessment.alloy().yieldMpa(),
                assessment.alloy().yieldBand().high() / assessment.alloy().yieldMpa());
        return new Reading(
                plastic / SHAPING.middle(),
                Optional.of(CUBE.band(shares -> plastic * yield.at(shares[0]) / SHAPING.at(shares[1]))));
    }
}
