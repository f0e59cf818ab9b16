package org.taperwright.designer.ui;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.bench.TwistingResult;

/** The outcome of the bench tests in words, torque in N cm and, as benches read it, in g cm. */
final class BenchWords {
    private static final double NMM_PER_NCM = 10;
    private static final double NMM_PER_GCM = 0.0980665;

    private BenchWords() {}

    static String bending(BendingResult result) {
        return torque(result.momentNmm()) + " at 45\u00b0" + limit(result.limit());
    }

    static String twisting(TwistingResult result) {
        return torque(result.plasticTorqueNmm()) + " fully plastic" + limit(result.limit());
    }

    private static String limit(Optional<StandardLimit> limit) {
        return limit.map(known -> "; the standard: " + (known.upper() ? "at most " : "at least ")
                        + torque(known.valueNmm()))
                .orElse("; no limit in the standard's table");
    }

    static String torque(double nmm) {
        return three(nmm / NMM_PER_NCM) + " N\u00b7cm (" + three(nmm / NMM_PER_GCM) + " g\u00b7cm)";
    }

    static String three(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3));
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }
}
