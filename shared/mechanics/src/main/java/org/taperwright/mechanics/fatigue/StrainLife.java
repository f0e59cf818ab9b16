package org.taperwright.mechanics.fatigue;

import java.util.List;
import org.taperwright.mechanics.uncertainty.Spread;

/**
 * A strain-life law {@code eps = a N^-beta}, written about a point: {@code N = gain n (eps_1 / (eps - shift))^(1/beta)} with
 * the life {@code n} at the strain amplitude {@code eps_1 = }{@value #POINT}, so {@code a = eps_1 n^beta}. Nothing breaks
 * within {@value #RUN_OUT} cycles at or below the endurance strain.
 *
 * @param pointCycles life at the point before any gain
 * @param beta exponent, above zero
 * @param endurance strain amplitude that is borne for {@value #RUN_OUT} cycles, before the shift
 * @param shift strain amplitude that the alloy bears beyond the alloy the law was found for
 * @param gain lives of that alloy
 * @param validFrom least strain amplitude that the source tested
 * @param validTo greatest such
 * @param source where the numbers come from and how they are known
 */
public record StrainLife(
        Spread pointCycles,
        Spread beta,
        Spread endurance,
        Spread shift,
        Spread gain,
        double validFrom,
        double validTo,
        String source) {
    /** Strain amplitude at which the law is anchored. */
    public static final double POINT = 0.03;
    /** Cycles after which tests are ended unbroken. */
    public static final double RUN_OUT = 1e7;
    /** Constants that are sampled: point, exponent, endurance, shift, gain. */
    public static final int CONSTANTS = 5;

    /** Cycles to fracture when each constant lies at a share of its spread. */
    public double cycles(double strain, double[] shares) {
        double beyond = strain - shift.at(shares[3]);
        if (beyond <= endurance.at(shares[2])) {
            return RUN_OUT;
        }
        double life = pointCycles.at(shares[0]) * gain.at(shares[4]) * Math.pow(POINT / beyond, 1 / beta.at(shares[1]));
        return Math.min(RUN_OUT, life);
    }

    /** The constants that are sampled, in order. */
    public List<Spread> spreads() {
        return List.of(pointCycles, beta, endurance, shift, gain);
    }

    /** Cycles to fracture with every constant in the middle of its spread. */
    public double cycles(double strain) {
        return cycles(strain, new double[] {0.5, 0.5, 0.5, 0.5, 0.5});
    }

    /** The same law with one of {@link #spreads()} replaced. */
    StrainLife with(int place, Spread other) {
        return new StrainLife(
                place == 0 ? other : pointCycles,
                place == 1 ? other : beta,
                place == 2 ? other : endurance,
                place == 3 ? other : shift,
                place == 4 ? other : gain,
                validFrom,
                validTo,
                source);
    }

    /** The same law with words before its source. */
    StrainLife from(String before) {
        return new StrainLife(pointCycles, beta, endurance, shift, gain, validFrom, validTo, before + source);
    }

    /** Whether a strain amplitude lies outside what the source tested. */
    public boolean extrapolates(double strain) {
        return strain < validFrom || strain > validTo;
    }
}
