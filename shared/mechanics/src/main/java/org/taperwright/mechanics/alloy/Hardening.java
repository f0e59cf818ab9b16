package org.taperwright.mechanics.alloy;

import java.util.List;
import org.taperwright.mechanics.alloy.StressCurve.Branch;

/**
 * Hooke's law up to yield, straight hardening up to the strength, then a slow rise; the same in tension and compression. In
 * shear the yield is von Mises' {@code Y / sqrt 3}, and the stress rises straight from there to the shear strength at the
 * shear strain of fracture: drawn wire goes on hardening through the large strains of twisting.
 *
 * <p>The slow rise is an assumption: a bent wire does not neck as a pulled one does, so beyond the strength U it is taken
 * to harden as in twisting, straight to {@code sqrt 3 tau_f} at the strain {@code gamma_f / sqrt 3} (von Mises' equivalent
 * stress and strain), by at least {@value #LEAST_RISE} of Young's modulus. A curve that stayed level would gather all
 * further bending in one cross-section. The rise settles over which length a yielded blade bends, so it decides the
 * greatest strain and hardly the moment. Validity: drawn steel wire under loading without return. Source: classical
 * plasticity (Prager, Hill).
 */
public final class Hardening implements StressLaw {
    /** Tangent modulus beyond yield, MPa. */
    public static final String MODULUS = "hardeningMpa";

    /** Least tangent modulus beyond the strength, over Young's modulus. */
    private static final double LEAST_RISE = 1e-3;

    @Override
    public String id() {
        return "hardening";
    }

    @Override
    public String label() {
        return "Elastic, then hardening";
    }

    @Override
    public String explanation() {
        return "Hooke's law up to yield, then a straight rise to the strength and a slow one; the strain beyond yield stays when unloaded.";
    }

    @Override
    public List<LawConstant> constants() {
        return List.of(
                new LawConstant(
                        MODULUS,
                        "Hardening modulus",
                        "MPa",
                        "Tangent modulus in tension beyond yield, to the strength."),
                Fracture.SHEAR_STRENGTH,
                Fracture.SHEAR_STRAIN);
    }

    @Override
    public boolean springsBack() {
        return false;
    }

    @Override
    public StressCurve tension(Alloy alloy) {
        double first = alloy.yieldMpa() / alloy.youngMpa();
        double hardening = alloy.constant(MODULUS);
        double rise = alloy.ultimateMpa() - alloy.yieldMpa();
        double strength = rise > 0 && hardening > 0 ? first + rise / hardening : first;
        double slow = slowRise(alloy, strength);
        Branch branch = strength > first
                ? new Branch(new double[] {first, strength}, new double[] {hardening, slow})
                : new Branch(new double[] {first}, new double[] {slow});
        return StressCurve.symmetric(alloy.youngMpa(), branch);
    }

    private static double slowRise(Alloy alloy, double strength) {
        double stress = Math.sqrt(3) * alloy.constant(Fracture.SHEAR_STRENGTH.name())
                - Math.max(alloy.ultimateMpa(), alloy.yieldMpa());
        double strain = alloy.constant(Fracture.SHEAR_STRAIN.name()) / Math.sqrt(3) - strength;
        double least = LEAST_RISE * alloy.youngMpa();
        return strain > 0 ? Math.max(least, stress / strain) : least;
    }

    @Override
    public StressCurve shear(Alloy alloy) {
        double modulus = alloy.shearModulusMpa();
        double first = alloy.shearYieldMpa() / modulus;
        double rise = alloy.constant(Fracture.SHEAR_STRENGTH.name()) - alloy.shearYieldMpa();
        double run = alloy.constant(Fracture.SHEAR_STRAIN.name()) - first;
        double hardening = rise > 0 && run > 0 ? rise / run : 0;
        return StressCurve.symmetric(modulus, new Branch(new double[] {first}, new double[] {hardening}));
    }
}
