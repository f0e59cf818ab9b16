package org.taperwright.mechanics.alloy;

import java.util.List;
import org.taperwright.mechanics.alloy.StressCurve.Branch;

/**
 * Hooke's law up to yield, straight hardening up to the tensile strength, then a slow straight rise; the same in tension
 * and compression. Drawn wire goes on hardening through the large strains of twisting, where nothing necks: the slow rise
 * leads to {@code sqrt 3 tau_f} at the strain {@code gamma_f / sqrt 3}, which is what the shear strength and the shear strain
 * at fracture stand for by von Mises. Without it bending would gather at the clamp without bound once the outer fibres
 * reach the strength.
 *
 * <p>In shear the yield is von Mises' {@code Y / sqrt 3}, and the stress rises straight from there to the shear strength at
 * the shear strain of fracture. Validity: drawn steel wire under loading without return. Source: classical plasticity
 * (Prager, Hill).
 */
public final class Hardening implements StressLaw {
    /** Tangent modulus beyond yield, MPa. */
    public static final String MODULUS = "hardeningMpa";

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
        return "Hooke's law up to yield, a straight rise to the strength, then a slow one; the strain beyond yield stays when unloaded.";
    }

    @Override
    public List<LawConstant> constants() {
        return List.of(
                new LawConstant(MODULUS, "Hardening modulus", "MPa", "Tangent modulus in tension beyond yield."),
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
        if (rise <= 0 || hardening <= 0) {
            return StressCurve.symmetric(alloy.youngMpa(), new Branch(new double[] {first}, new double[] {
                slope(alloy, first, alloy.yieldMpa(), hardening)
            }));
        }
        double second = first + rise / hardening;
        return StressCurve.symmetric(alloy.youngMpa(), new Branch(new double[] {first, second}, new double[] {
            hardening, slope(alloy, second, alloy.ultimateMpa(), hardening)
        }));
    }

    /** Slope from a point to where twisting breaks it, by von Mises; level where that lies lower or nearer. */
    private static double slope(Alloy alloy, double strain, double stressMpa, double most) {
        double root = Math.sqrt(3);
        double rise = root * alloy.constant(Fracture.SHEAR_STRENGTH.name()) - stressMpa;
        double run = alloy.constant(Fracture.SHEAR_STRAIN.name()) / root - strain;
        return rise > 0 && run > 0 ? Math.min(rise / run, most) : 0;
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
