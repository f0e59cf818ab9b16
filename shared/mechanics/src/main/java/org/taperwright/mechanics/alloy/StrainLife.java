package org.taperwright.mechanics.alloy;

import java.util.List;

/**
 * Constants of a strain-life law, which every alloy gives besides those of its stress law:
 *
 * <pre>N = N0 (eps / eps0)^(1/b),   that is   eps = a N^b  with  a = eps0 N0^-b</pre>
 *
 * with the strain amplitude eps of the outer fibre, the cycles N to fracture and a point (N0, eps0) through which the law
 * goes. Below the endurance strain it lasts 10 million cycles or more.
 */
public final class StrainLife {
    /** Cycles that a strain below the endurance strain is borne for at least. */
    public static final double ENDURED = 1e7;

    /** Strain amplitude of a point of the law. */
    public static final LawConstant STRAIN = new LawConstant(
            "lifeStrain", "Strain amplitude at the anchor", "", "Strain amplitude of one point of the law.");

    /** Cycles at that strain amplitude. */
    public static final LawConstant CYCLES =
            new LawConstant("lifeCycles", "Cycles at the anchor", "", "Cycles to fracture at that strain amplitude.");

    /** Exponent b. */
    public static final LawConstant EXPONENT =
            new LawConstant("lifeExponent", "Fatigue exponent", "", "Exponent of the cycles in the strain-life law.");

    /** Strain amplitude below which it does not break in 10 million cycles. */
    public static final LawConstant ENDURANCE = new LawConstant(
            "enduranceStrain", "Endurance strain", "", "Strain amplitude borne for 10 million cycles or more.");

    /** Life in reciprocation over life in rotation. */
    public static final LawConstant RECIPROCATION = new LawConstant(
            "reciprocationGain", "Gain of reciprocation", "", "Cycles in reciprocation over cycles in rotation.");

    /** Cycles of one instrument over the median: 1, with a band. */
    public static final LawConstant SCATTER = new LawConstant(
            "lifeScatter", "Scatter of life", "", "Cycles of one instrument over the median of its kind.");

    /** Least strain amplitude that the source tested; 0 to 0 where no test of instruments is known. */
    public static final LawConstant LEAST = new LawConstant(
            "lifeLeastStrain", "Least strain tested", "", "Least strain amplitude that the source's tests cover.");

    /** Greatest strain amplitude that the source tested. */
    public static final LawConstant MOST = new LawConstant(
            "lifeMostStrain", "Greatest strain tested", "", "Greatest strain amplitude that the source's tests cover.");

    /** All of them. */
    public static final List<LawConstant> CONSTANTS =
            List.of(STRAIN, CYCLES, EXPONENT, ENDURANCE, RECIPROCATION, SCATTER, LEAST, MOST);

    private StrainLife() {}
}
