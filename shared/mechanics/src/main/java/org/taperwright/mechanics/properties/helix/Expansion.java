package org.taperwright.mechanics.properties.helix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;

/**
 * Displacements from which those at any twist can be put together: the answer to each prescribed strain at the twist a
 * and its derivatives by the twist, all from one factorisation. With the free strains m,
 *
 * <pre>K w_k + F m_k = -K' w_(k-1) - K'' w_(k-2) - F' m_(k-1)        T^H (F^H w_k + E m_k) = -T^H F'^H w_(k-1)</pre>
 */
final class Expansion {
    private final Screw screw;
    private final EnvelopeCholesky factor;
    private final Field[] answer = new Field[Screw.MACROS];
    private final MacroStiffness stiffness;
    private final List<Field> free;

    private Expansion(Screw screw, EnvelopeCholesky factor, List<Field> free) {
        this.screw = screw;
        this.factor = factor;
        this.free = free;
        Field[] load = new Field[Screw.MACROS];
        for (int j = 0; j < Screw.MACROS; j++) {
            load[j] = screw.load(j);
            answer[j] = load[j].copy();
            solve(answer[j]);
        }
        stiffness = MacroStiffness.relaxed(screw.macro(), load, answer);
    }

    /**
     * The displacements of a screw's expansion.
     *
     * @param prescribed strains that are asked for, one after another
     * @param free strains that are free
     * @param orders number of derivatives
     * @return nothing where the stiffness is not positive definite
     */
    static Optional<List<Screw.Image>> of(Screw screw, List<Field> prescribed, List<Field> free, int orders) {
        EnvelopeCholesky factor = screw.matrix();
        if (!factor.factorise()) {
            return Optional.empty();
        }
        Expansion expansion = new Expansion(screw, factor, free);
        List<Screw.Image> images = new ArrayList<>();
        for (Field strain : prescribed) {
            expansion.add(strain, orders, images);
        }
        return Optional.of(images);
    }

    private void add(Field prescribed, int orders, List<Screw.Image> images) {
        Field strain = stiffness.leastEnergy(prescribed, free);
        Field vector = MacroStiffness.combine(answer, strain);
        vector.scale(-1);
        Screw.Image image = screw.image(vector);
        images.add(image);
        Optional<Screw.Image> before = Optional.empty();
        for (int k = 1; k <= orders; k++) {
            Field next = pull(image, before, strain);
            solve(next);
            strain = stiffness.yielding(force(image.vector(), next), free);
            for (int j = 0; j < Screw.MACROS; j++) {
                next.add(-strain.re()[j], -strain.im(j), answer[j]);
            }
            before = Optional.of(image);
            image = screw.image(next);
            images.add(image);
        }
    }

    /** {@code -K' w - K'' w_before - F' m}. */
    private Field pull(Screw.Image image, Optional<Screw.Image> before, Field strain) {
        Field right = image.slope().copy();
        before.ifPresent(earlier -> right.add(1, 0, earlier.bend()));
        for (int j = 0; j < Screw.MACROS; j++) {
            right.add(strain.re()[j], strain.im(j), screw.loadSlope(j));
        }
        right.scale(-1);
        return right;
    }

    /** {@code -F'^H w - F^H v}, of the displacement before and the one found so far. */
    private Field force(Field before, Field found) {
        Field force = Field.zero(Screw.MACROS, screw.complex());
        for (int j = 0; j < Screw.MACROS; j++) {
            force.re()[j] = -screw.loadSlope(j).dotRe(before) - screw.load(j).dotRe(found);
            if (screw.complex()) {
                force.im()[j] =
                        -screw.loadSlope(j).dotIm(before) - screw.load(j).dotIm(found);
            }
        }
        return force;
    }

    private void solve(Field right) {
        factor.solve(right.re(), right.im());
    }
}
