package org.taperwright.mechanics.cutting;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

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
     * The constants with their bands, in the order of the record. Shear strength 36 to 138 MPa, hardness 45 to 70 kgf/mm² (Kinney,
     * Marshall and Marshall, Crit Rev Oral Biol Med 2003;14:13 and later reviews; from memory, medium confidence);
     * friction 0.1 to 0.4 (from memory, low confidence); modulus 20 to 25 GPa, relaxed 12 GPa (Kinney 2003, abstract
     * read); loosening: no source.
     */
    public static final List<Reading> CONSTANTS = List.of(
            about(70, 36, 138),
            about(560, 441, 686),
            about(0.22, 0.1, 0.4),
            about(17_000, 12_000, 25_000),
            about(2, 1.5, 3));

    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }

    /** The constants' values. */
    public static Dentine usual() {
        return of(CONSTANTS.stream().mapToDouble(Reading::value).toArray());
    }

    /** Dentine of constants in the order of the record. */
    static Dentine of(double[] values) {
        return new Dentine(values[0], values[1], values[2], values[3], values[4]);
    }
}
