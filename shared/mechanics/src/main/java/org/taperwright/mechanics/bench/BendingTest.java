package org.taperwright.mechanics.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * The bending test: the tip's last 3 mm clamped, a force across the undeformed axis at 17 mm of arc length beyond the
 * clamp, until the chord from the clamp to the load stands at 45 degrees; the moment at the clamp is the result.
 *
 * <p>Large deflections of the tapering rod ({@link Elastica}) with the moment-curvature of its sections, averaged over a
 * turn of the flutes, by the alloy's stress law under loading. The greatest strain is the mean over one diameter of length: where steel gives
 * way in a hinge, a rod's strain is sharper than plane sections can be, which even out within about a diameter of what makes
 * them bend (Saint-Venant's principle). Relative error of the rod's equations about 1e-7 in the
 * elastic range, below 1e-3 beyond it. Validity: flutes that turn three times or more over the bent length, or equal principal second moments;
 * elsewhere the moment is a mean over how the blade may be clamped ({@link SpaceBending}). An instrument shorter than 20 mm is taken as if its shaft went on. Source of the idea: ISO 3630-1.
 */
public final class BendingTest {
    /** Where the clamp ends, mm from the tip. */
    public static final double CLAMP_MM = 3;
    /** Where the load acts, mm from the tip along the undeformed axis. */
    public static final double LOAD_MM = 20;
    /** The chord's angle at which the moment is read, degrees. */
    public static final double ANGLE_DEG = 45;

    private static final double CURVE_STEP_DEG = 2.5;

    /** Longest step of the rod, mm: the curvature of a yielding or transforming section turns sharply along it. */
    private static final double STEP_MM = 0.125;

    private static final int FEW_RUNS = 150;

    private BendingTest() {}

    /**
     * Bends a design to 45 degrees.
     *
     * @throws Unsolved when no equilibrium can be found
     */
    public static BendingResult run(Design design, Alloy alloy, BladeSections sections) {
        return run(design, alloy, sections, STEP_MM, Elastica.MOST_RUNS);
    }

    /**
     * The same, given up sooner, for results of which many are wanted and not each is needed.
     *
     * @throws Unsolved when no equilibrium can be found by the effort that nineteen of twenty rods need
     */
    public static BendingResult runOrGiveUp(Design design, Alloy alloy, BladeSections sections) {
        return run(design, alloy, sections, STEP_MM, FEW_RUNS);
    }

    static BendingResult run(Design design, Alloy alloy, BladeSections sections, double stepMm) {
        return run(design, alloy, sections, stepMm, Elastica.MOST_RUNS);
    }

    private static BendingResult run(Design design, Alloy alloy, BladeSections sections, double stepMm, int mostRuns) {
        RodGrid grid = RodGrid.between(design, CLAMP_MM, LOAD_MM, stepMm);
        BladeCurvature law = BladeCurvature.of(grid, design, alloy, sections);
        List<Equilibrium> equilibria = new Elastica(grid, law, mostRuns).along(chords());
        List<CurvePoint> curve = new ArrayList<>();
        for (Equilibrium equilibrium : equilibria) {
            curve.add(new CurvePoint(Math.toDegrees(equilibrium.chord()), equilibrium.momentNmm()));
        }
        Equilibrium end = equilibria.get(equilibria.size() - 1);
        BentShape shape = BentShape.of(grid, law, end);
        double[] strain = new double[grid.nodes()];
        double[] diameter = new double[grid.nodes()];
        for (int node = 0; node < strain.length; node++) {
            strain[node] = law.strain(node, shape.momentNmm(node), shape.curvature(node));
            diameter[node] = law.diameterMm(node);
        }
        StretchMean mean = StretchMean.greatest(grid, strain, diameter);
        return new BendingResult(
                end.momentNmm(),
                end.forceN(),
                Math.toDegrees(end.endSlope()),
                mean.value(),
                Math.round(mean.levelMm() * 1e6) / 1e6,
                alloy.springsBack() ? OptionalDouble.empty() : OptionalDouble.of(Math.toDegrees(shape.chordLeft())),
                curve,
                StandardLimits.greatestBendingMoment(design));
    }

    /** The moment at the clamp at a chord angle in degrees, N mm, without the curve that leads there. */
    public static double momentNmm(Design design, Alloy alloy, BladeSections sections, double chordDeg) {
        RodGrid grid = grid(design);
        return momentNmm(grid, BladeCurvature.of(grid, design, alloy, sections), chordDeg);
    }

    /**
     * The moments at the clamp at rising chord angles in degrees, N mm.
     *
     * @throws Unsolved when no equilibrium can be found
     */
    public static double[] momentsNmm(Design design, Alloy alloy, BladeSections sections, double... chordsDeg) {
        RodGrid grid = grid(design);
        BladeCurvature law = BladeCurvature.of(grid, design, alloy, sections);
        double[] chords = Arrays.stream(chordsDeg).map(Math::toRadians).toArray();
        return new Elastica(grid, law)
                .along(chords).stream().mapToDouble(Equilibrium::momentNmm).toArray();
    }

    /**
     * The moment at the clamp of a blade that does not turn, bent about one axis of its sections, N mm.
     *
     * @param axis angle of that axis from x in the sections, rad
     */
    public static double momentAboutNmm(
            Design design, Alloy alloy, BladeSections sections, double axis, double chordDeg) {
        RodGrid grid = grid(design);
        return momentNmm(grid, BladeCurvature.about(axis, grid, design, alloy.tension(), sections), chordDeg);
    }

    private static double momentNmm(RodGrid grid, CurvatureLaw law, double chordDeg) {
        return new Elastica(grid, law).along(Math.toRadians(chordDeg)).get(0).momentNmm();
    }

    private static RodGrid grid(Design design) {
        return RodGrid.between(design, CLAMP_MM, LOAD_MM, STEP_MM);
    }

    private static double[] chords() {
        int steps = (int) Math.round(ANGLE_DEG / CURVE_STEP_DEG);
        double[] chords = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            chords[i] = Math.toRadians(ANGLE_DEG) * i / steps;
        }
        return chords;
    }
}
