package org.taperwright.mechanics.properties.helix;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;

/**
 * The twisted bar's equations for one harmonic on a few displacements: small enough to be solved for any twist at once.
 *
 * @param twist the twist a about which they are written
 * @param macro the macroscopic strains' own stiffness
 * @param value stiffness at a, by columns
 * @param slope its first derivative by the twist at a
 * @param bend half its second
 * @param load the macroscopic strains' loads at a
 * @param loadSlope their derivatives
 */
record ReducedScrew(
        double twist, double[][] macro, Field[] value, Field[] slope, Field[] bend, Field[] load, Field[] loadSlope) {

    /**
     * What happens at a twist.
     *
     * @param strain the macroscopic strains, the free ones at least energy
     * @param shares of the displacements of the {@link Projection}
     * @param force the generalised forces on the macroscopic strains
     */
    record State(Field strain, Field shares, Field force) {}

    /**
     * The equations at a twist with the displacements eliminated.
     *
     * @param stiffness of the macroscopic strains
     * @param answer the displacements' shares for each macroscopic strain, with the sign turned
     */
    record Relaxed(MacroStiffness stiffness, Field[] answer) {
        /** What happens under a prescribed strain while others are free. */
        State under(Field prescribed, List<Field> free) {
            Field strain = stiffness.leastEnergy(prescribed, free);
            Field shares = MacroStiffness.combine(answer, strain);
            shares.scale(-1);
            return new State(strain, shares, stiffness.times(strain));
        }
    }

    /** The equations at a twist; nothing where rounding spoils the small system. */
    Optional<Relaxed> at(double t) {
        double beyond = t - twist;
        EnvelopeCholesky matrix = matrix(beyond);
        if (!matrix.factorise()) {
            return Optional.empty();
        }
        Field[] loads = new Field[Screw.MACROS];
        Field[] answer = new Field[Screw.MACROS];
        for (int j = 0; j < Screw.MACROS; j++) {
            loads[j] = load[j].copy();
            loads[j].add(beyond, 0, loadSlope[j]);
            answer[j] = loads[j].copy();
            matrix.solve(answer[j].re(), answer[j].im());
        }
        return Optional.of(new Relaxed(MacroStiffness.relaxed(macro, loads, answer), answer));
    }

    private EnvelopeCholesky matrix(double beyond) {
        int n = value.length;
        EnvelopeCholesky matrix = EnvelopeCholesky.full(n, load[0].complex());
        for (int j = 0; j < n; j++) {
            Field column = value[j].copy();
            column.add(beyond, 0, slope[j]);
            column.add(beyond * beyond, 0, bend[j]);
            for (int i = j; i < n; i++) {
                matrix.add(i, j, column.re()[i], column.im(i));
            }
        }
        return matrix;
    }
}
