package org.taperwright.mechanics.cutting;

import java.util.List;
import org.taperwright.mechanics.uncertainty.Spread;

/**
 * Dentine, and its friction against an edge, as one set of values.
 *
 * @param shearMpa shear strength k, MPa
 * @param hardnessMpa pressure under a wedge that sinks in, MPa
 * @param friction coefficient of friction, wet
 * @param youngMpa Young's modulus E, MPa
 * @param loosening volume of loose chips over that of the dentine they come from
 */
public record Dentine(double shearMpa, double hardnessMpa, double friction, double youngMpa, double loosening) {
    /**
     * Between what the constants lie, in the order of the record. Shear strength 36 to 138 MPa, hardness 45 to 70 kgf/mm²
     * (Kinney, Marshall and Marshall, Crit Rev Oral Biol Med 2003;14:13 and later reviews; from memory, medium confidence);
     * friction 0.1 to 0.4 (from memory, low confidence); modulus 20 to 25 GPa, relaxed 12 GPa (Kinney 2003, abstract
     * read); loosening: no source.
     */
    static final List<Spread> CONSTANTS = List.of(
            Spread.byRatio(36, 138),
            Spread.byRatio(441, 686),
            Spread.even(0.1, 0.4),
            Spread.byRatio(12_000, 25_000),
            Spread.byRatio(1.5, 3));

    /** Names of the constants, in the same order. */
    static final List<String> NAMES = List.of(
            "dentine.shearMpa", "dentine.hardnessMpa", "dentine.friction", "dentine.youngMpa", "dentine.loosening");

    /** Dentine of the middle of every constant. */
    public static Dentine usual() {
        return at(new double[] {0.5, 0.5, 0.5, 0.5, 0.5});
    }

    /** Dentine at a share of each constant's spread. */
    static Dentine at(double[] share) {
        return new Dentine(
                CONSTANTS.get(0).at(share[0]),
                CONSTANTS.get(1).at(share[1]),
                CONSTANTS.get(2).at(share[2]),
                CONSTANTS.get(3).at(share[3]),
                CONSTANTS.get(4).at(share[4]));
    }
}
