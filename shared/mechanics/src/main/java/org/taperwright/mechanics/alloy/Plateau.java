package org.taperwright.mechanics.alloy;

import java.util.List;
import org.taperwright.mechanics.alloy.StressCurve.Branch;

/**
 * Curves with a plateau: Young's modulus up to it, the plateau's slope up to the strain at which the change of phase (or, in
 * martensite, its reorientation) is complete, the modulus of martensite beyond it up to its yield, and a straight rise from
 * there to the strength at the strain of fracture. The plateau in compression begins at a stress higher by the asymmetry; both
 * end at the same strain.
 *
 * <p>In shear the plateau begins at {@code 2 a / (1 + a) Y / sqrt 3}, which is von Mises' for a = 1 and Drucker and Prager's
 * criterion without pressure for a plateau of asymmetry a; later strains are {@code sqrt 3} times, later moduli a third of
 * those in tension.
 */
public final class Plateau {
    /** Strain at which the plateau ends. */
    public static final String END = "plateauEndStrain";
    /** Tangent modulus of the plateau, MPa. */
    public static final String SLOPE = "plateauMpa";
    /** Tangent modulus beyond the plateau, MPa. */
    public static final String MARTENSITE = "martensiteMpa";
    /** Stress at which martensite yields, MPa. */
    public static final String MARTENSITE_YIELD = "martensiteYieldMpa";
    /** Plateau stress in compression over that in tension. */
    public static final String ASYMMETRY = "asymmetry";

    static final List<LawConstant> CONSTANTS = List.of(
            new LawConstant(END, "Strain at the plateau's end", "", "Strain at which the plateau ends."),
            new LawConstant(SLOPE, "Plateau slope", "MPa", "Tangent modulus along the plateau."),
            new LawConstant(MARTENSITE, "Modulus beyond the plateau", "MPa", "Tangent modulus of martensite."),
            new LawConstant(MARTENSITE_YIELD, "Yield beyond the plateau", "MPa", "Stress at which martensite yields."),
            new LawConstant(ASYMMETRY, "Asymmetry", "", "Plateau stress in compression over that in tension."),
            Fracture.SHEAR_STRENGTH,
            Fracture.SHEAR_STRAIN);

    private Plateau() {}

    static StressCurve tension(Alloy alloy) {
        double end = alloy.constant(END);
        double fracture = alloy.constant(Fracture.SHEAR_STRAIN.name()) / Math.sqrt(3);
        double pressed = alloy.yieldMpa() * alloy.constant(ASYMMETRY);
        Stretches stretches = new Stretches(alloy, alloy.youngMpa(), 1, end, alloy.ultimateMpa(), fracture);
        return new StressCurve(alloy.youngMpa(), stretches.from(alloy.yieldMpa()), stretches.from(pressed));
    }

    static StressCurve shear(Alloy alloy) {
        double asymmetry = alloy.constant(ASYMMETRY);
        double plateau = 2 * asymmetry / (1 + asymmetry) * alloy.shearYieldMpa();
        Stretches stretches = new Stretches(
                alloy,
                alloy.shearModulusMpa(),
                Math.sqrt(3),
                Math.sqrt(3) * alloy.constant(END),
                alloy.constant(Fracture.SHEAR_STRENGTH.name()),
                alloy.constant(Fracture.SHEAR_STRAIN.name()));
        return StressCurve.symmetric(alloy.shearModulusMpa(), stretches.from(plateau));
    }

    /** The stretches of one side; in shear strains are sqrt 3 times and stresses 1 / sqrt 3 times those in tension. */
    private record Stretches(Alloy alloy, double modulus, double root, double end, double strength, double fracture) {
        Branch from(double plateau) {
            double along = alloy.constant(SLOPE) / (root * root);
            double beyond = alloy.constant(MARTENSITE) / (root * root);
            double first = plateau / modulus;
            double second = Math.max(end, 1.01 * first);
            double reached = plateau + along * (second - first);
            double yield = Math.max(alloy.constant(MARTENSITE_YIELD) / root, reached);
            double third = second + Math.max((yield - reached) / beyond, 0.01 * second);
            double risen = reached + beyond * (third - second);
            double last = strength > risen && fracture > third ? (strength - risen) / (fracture - third) : 0;
            return new Branch(new double[] {first, second, third}, new double[] {along, beyond, last});
        }
    }
}
