package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * Large deflection of a clamped rod under a force at its end that keeps its direction, across the undeformed axis.
 *
 * <p>Run from the loaded end towards the clamp, with s the arc length from the load, theta the slope and X, Y the
 * distances from the load along and across the undeformed axis:
 *
 * <pre>theta' = -kappa(F X; s),  X' = cos theta,  Y' = sin theta,  X(0) = Y(0) = 0,  theta(0) = alpha</pre>
 *
 * because the moment is the force times its arm, {@code M = F X}. The end slope alpha and the force F are found so that
 * {@code theta(L) = 0} and the chord from the clamp to the load stands at a given angle, {@code Y(L) = X(L) tan beta}:
 * Newton's method with the exact derivatives of the discrete equations, starting from the angle before. The rod neither
 * stretches nor shears. Any curvature that rises with the moment may be given.
 *
 * <p>Source: Euler's elastica; Bisshopp and Drucker, Quarterly of Applied Mathematics 3 (1945), for the uniform rod.
 */
final class Elastica {
    private static final int NEWTON_STEPS = 25;
    private static final int HALVINGS = 12;

    /** Misfit of slope (rad) and of place (over the length) from which one more step is exact to about 1e-11. */
    private static final double NEAR = 3e-6;

    /** Step of the slope, rad, and of the force as a share, below which the equations are not all but singular. */
    private static final double STEADY = 0.01;
    /** Runs along the rod for all chords together; usually there are two or three to a chord. */
    static final int MOST_RUNS = 400;

    /** Slope, rad, that is no rounding: the rod has other equilibria, in waves, that nobody who presses on it meets. */
    private static final double BENT_BACK = 1e-3;

    private final RodMarch march;
    private final double length;
    private final int mostRuns;
    private double alpha;
    private double force;
    private double arm;
    private int runs;

    Elastica(RodGrid grid, CurvatureLaw law) {
        this(grid, law, MOST_RUNS);
    }

    /**
     * A rod.
     *
     * @param mostRuns runs along it, for all chords together, after which there is no solution
     */
    Elastica(RodGrid grid, CurvatureLaw law, int mostRuns) {
        this.mostRuns = mostRuns;
        this.march = new RodMarch(grid, law);
        this.length = grid.lengthMm();
    }

    /** The undeflected rod. */
    private Equilibrium straight() {
        return new Equilibrium(0, 0, 0, length, 0);
    }

    /**
     * The equilibria at rising chord angles, starting from the straight rod.
     *
     * @param chords angles, rad, rising from 0 or more, below a right angle
     * @throws Unsolved when the equations have no solution that Newton's method can reach
     */
    List<Equilibrium> along(double... chords) {
        List<Equilibrium> found = new ArrayList<>(chords.length);
        Equilibrium before = straight();
        Equilibrium last = before;
        runs = 0;
        for (double chord : chords) {
            Equilibrium next = chord == 0 ? straight() : reach(before, last, chord, 0);
            found.add(next);
            before = last;
            last = next;
        }
        return found;
    }

    /** Newton's method from the extrapolation of two equilibria; by way of the middle when that is too far. */
    private Equilibrium reach(Equilibrium before, Equilibrium last, double chord, int halvings) {
        double stride = last.chord() - before.chord();
        double share = stride > 0 ? (chord - last.chord()) / stride : 0;
        alpha = last.endSlope() + share * (last.endSlope() - before.endSlope());
        force = last.forceN() + share * (last.forceN() - before.forceN());
        if (converge(chord)) {
            return new Equilibrium(chord, alpha, force, arm, Math.tan(chord) * arm);
        }
        if (halvings >= HALVINGS || runs > mostRuns) {
            throw new Unsolved("no equilibrium found with the chord at " + Math.toDegrees(chord) + " degrees");
        }
        Equilibrium midway = reach(before, last, (last.chord() + chord) / 2, halvings + 1);
        return reach(last, midway, chord, halvings + 1);
    }

    /**
     * Newton's method; its error is squared at each step, so once the misfit is within the square root of what is wanted,
     * the step from there is the last and its result is not run again.
     */
    private boolean converge(double chord) {
        double tangent = Math.tan(chord);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            march.run(alpha, force);
            runs++;
            double clampSlope = march.clampSlope();
            double miss = march.deflectionMm() - tangent * march.armMm();
            double a = march.clampSlopeBy(RodMarch.ALPHA);
            double b = march.clampSlopeBy(RodMarch.FORCE);
            double c = march.deflectionBy(RodMarch.ALPHA) - tangent * march.armBy(RodMarch.ALPHA);
            double d = march.deflectionBy(RodMarch.FORCE) - tangent * march.armBy(RodMarch.FORCE);
            double determinant = a * d - b * c;
            double alphaStep = (b * miss - d * clampSlope) / determinant;
            double forceStep = (c * clampSlope - a * miss) / determinant;
            alpha += alphaStep;
            force += forceStep;
            arm = march.armMm() + march.armBy(RodMarch.ALPHA) * alphaStep + march.armBy(RodMarch.FORCE) * forceStep;
            if (!(alpha > -0.5 && alpha < Math.PI && force >= 0)) {
                return false;
            }
            boolean steady = Math.abs(alphaStep) < STEADY && Math.abs(forceStep) < STEADY * force;
            if (steady && Math.abs(clampSlope) < NEAR && Math.abs(miss) < NEAR * length) {
                return alpha < Math.PI / 2 && march.leastSlope() > -BENT_BACK;
            }
        }
        return false;
    }
}
