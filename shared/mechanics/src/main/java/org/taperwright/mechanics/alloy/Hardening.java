package org.taperwright.mechanics.alloy;

import java.util.List;
import org.taperwright.mechanics.alloy.StressCurve.Branch;

/**
 * Hooke's law up to yield, straight hardening up to the strength, then level; the same in tension and compression. In shear
 * the yield is von Mises' {@code Y / sqrt 3}, and the stress rises straight from there to the shear strength at the shear
 * strain of fracture: drawn wire goes on hardening through the large strains of twisting. Validity: drawn steel wire under loading without return. Source: classical plasticity (Prager, Hill).
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
        return "Hooke's law up to yield, then a straight rise to the strength; the strain beyond yield stays when unloaded.";
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
        Branch branch = rise > 0 && hardening > 0
                ? new Branch(new double[] {first, first + rise / hardening}, new double[] {hardening, 0})
                : new Branch(new double[] {first}, new double[] {0});
        return StressCurve.symmetric(alloy.youngMpa(), branch);
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
