package org.taperwright.mechanics.uncertainty;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * The band of a result that is too costly to solve at every sample: it is solved at its constants and, one constant at a time,
 * at both edges of that constant's band. Its logarithm is taken as straight between those and the constants as acting by
 * themselves; the Latin hypercube's samples are drawn of that. A constant's value stands for its median, its band's edges for
 * 5 and 95 %. Validity: results that are positive and change by much less than a power of ten over a band.
 */
public final class Sensitivity {
    private static final double EDGE = 0.05;

    private Sensitivity() {}

    /** The result with its band. */
    public static Reading reading(List<Reading> constants, ToDoubleFunction<double[]> result) {
        double[] at = constants.stream().mapToDouble(Reading::value).toArray();
        double value = result.applyAsDouble(at);
        double[] below = new double[at.length];
        double[] above = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            Optional<Band> band = constants.get(k).band();
            if (band.isPresent()) {
                double middle = at[k];
                at[k] = band.get().low();
                below[k] = Math.log(result.applyAsDouble(at) / value);
                at[k] = band.get().high();
                above[k] = Math.log(result.applyAsDouble(at) / value);
                at[k] = middle;
            }
        }
        Band logarithm = new LatinHypercube(at.length).band(shares -> {
            double sum = 0;
            for (int k = 0; k < shares.length; k++) {
                double beyond = (shares[k] - 0.5) / (0.5 - EDGE);
                sum += beyond < 0 ? -beyond * below[k] : beyond * above[k];
            }
            return sum;
        });
        return new Reading(
                value,
                Optional.of(new Band(
                        value * Math.exp(Math.min(0, logarithm.low())),
                        value * Math.exp(Math.max(0, logarithm.high())))));
    }
}
