package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * The bending test: the tip's last 3 mm clamped, a force across the undeformed axis at 17 mm of arc length beyond the
 * clamp, until the chord from the clamp to the load stands at 45 degrees; the moment at the clamp is the result.
 *
 * <p>Large deflections of the tapering rod ({@link Elastica}) with Hooke's law. Validity: strains stay elastic; a
 * superelastic alloy past its plateau bends more easily than this says. Relative error of the rod's equations about
 * 1e-7. An instrument shorter than 20 mm is taken as if its shaft went on. Source of the idea: ISO 3630-1.
 */
public final class BendingTest {
    /** Where the clamp ends, mm from the tip. */
    public static final double CLAMP_MM = 3;
    /** Where the load acts, mm from the tip along the undeformed axis. */
    public static final double LOAD_MM = 20;
    /** The chord's angle at which the moment is read, degrees. */
    public static final double ANGLE_DEG = 45;

    private static final double CURVE_STEP_DEG = 2.5;

    private BendingTest() {}

    /**
     * Bends a design to 45 degrees.
     *
     * @throws Unsolved when no equilibrium can be found
     */
    public static BendingResult run(Design design, Alloy alloy, BladeSections sections) {
        Elastica elastica = elastica(design, alloy, sections);
        int steps = (int) Math.round(ANGLE_DEG / CURVE_STEP_DEG);
        double[] chords = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            chords[i] = Math.toRadians(ANGLE_DEG) * i / steps;
        }
        List<Equilibrium> equilibria = elastica.along(chords);
        List<CurvePoint> curve = new ArrayList<>();
        for (Equilibrium equilibrium : equilibria) {
            curve.add(new CurvePoint(Math.toDegrees(equilibrium.chord()), equilibrium.momentNmm()));
        }
        Equilibrium end = equilibria.get(steps);
        return new BendingResult(
                end.momentNmm(),
                end.forceN(),
                Math.toDegrees(end.endSlope()),
                curve,
                StandardLimits.greatestBendingMoment(design));
    }

    /** The moment at the clamp at a chord angle in degrees, N mm, without the curve that leads there. */
    public static double momentNmm(Design design, Alloy alloy, BladeSections sections, double chordDeg) {
        return elastica(design, alloy, sections)
                .along(Math.toRadians(chordDeg))
                .get(0)
                .momentNmm();
    }

    private static Elastica elastica(Design design, Alloy alloy, BladeSections sections) {
        RodGrid grid = RodGrid.between(design, CLAMP_MM, LOAD_MM);
        return new Elastica(grid, new LinearCurvature(new BladeCompliance(design, alloy, sections).bending(grid)));
    }
}
