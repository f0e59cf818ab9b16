package org.taperwright.designer.ui;

import java.util.Optional;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.uncertainty.Sampled;

/** The outcome of the bench tests in words, torque in N cm and, as benches read it, in g cm. */
final class BenchWords {
    private BenchWords() {}

    static String bending(BendingResult result, BendingSpread spread) {
        return torque(result.momentNmm()) + " at 45\u00b0" + band(spread.momentNmm()) + limit(result.limit());
    }

    static String twisting(TwistingResult result, TwistingSpread spread) {
        return "breaks at " + torque(result.fractureTorqueNmm()) + band(spread.fractureTorqueNmm())
                + limit(result.limit());
    }

    private static String band(Sampled torqueNmm) {
        return torqueNmm
                .map(nmm -> Unit.NEWTON_MILLIMETRE.in(Unit.NEWTON_CENTIMETRE, nmm))
                .band()
                .map(band -> "; 5 to 95\u00a0% (shaded): " + Shown.band(band) + " " + Unit.NEWTON_CENTIMETRE.symbol())
                .orElse("");
    }

    private static String limit(Optional<StandardLimit> limit) {
        return limit.map(known ->
                        "; the standard: " + (known.upper() ? "at most " : "at least ") + torque(known.valueNmm()))
                .orElse("; no limit in the standard's table");
    }

    /** In the unit of motors, and in the one benches are read in. */
    static String torque(double nmm) {
        return Shown.torque(nmm) + " ("
                + Shown.of(Unit.NEWTON_MILLIMETRE.in(Unit.GRAM_CENTIMETRE, nmm), Unit.GRAM_CENTIMETRE) + ")";
    }
}
