package org.taperwright.mechanics.bench;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.SectionProperties;

/**
 * The bending test of a blade whose principal axes turn along it, in the elastic range: the rod leaves the plane of the
 * force. The force F and the place of the load are found so that the rod ends there and its chord, seen along z, stands at the given angle: Newton's method with differences, led on from small angles ({@link SpaceMarch}).
 *
 * <p>What {@link BendingTest} takes instead, the compliance averaged over a turn, holds where the flutes turn often over the
 * bent length or the principal second moments are equal; {@link #matters} says where it does not. There the moment depends
 * on how the blade is turned in the clamp, and {@link #spread} says by how much.
 *
 * @param forceN force, N
 * @param armMm arm of the force about the clamp along the undeformed axis, mm
 * @param asideMm travel of the load out of the plane of force and axis, mm
 * @param endSlopeDeg angle from the undeformed axis to the end, seen along z, degrees
 */
public record SpaceBending(double forceN, double armMm, double asideMm, double endSlopeDeg) {
    private static final double STEP_DEG = 15;
    private static final double STEP_MM = 0.25;
    private static final int NEWTON_STEPS = 20;
    private static final double MISFIT = 1e-10;
    /** Turns over the bent length from which the orientation in the clamp changes the moment by about 5 % or less. */
    private static final double OFTEN = 3;

    private static final double UNEQUAL = 1.1;
    private static final int ORIENTATIONS = 4;

    /** Moment at the clamp about the axis across force and undeformed axis, N mm. */
    public double momentNmm() {
        return forceN * armMm;
    }

    /**
     * Bends a design until its chord stands at an angle.
     *
     * @param orientation angle in the clamp from the force's normal to the sections' x, rad
     * @throws Unsolved when no equilibrium is found
     */
    public static SpaceBending of(
            Design design, Alloy alloy, BladeSections sections, double orientation, double chordDeg) {
        return bent(design, alloy, sections, ShaftedBlade.of(design, alloy, sections), orientation, chordDeg);
    }

    /** The same of a rod with the stiffness of straight bars, for comparison with other rods. */
    public static SpaceBending ofStraightBars(
            Design design, Alloy alloy, BladeSections sections, double orientation, double chordDeg) {
        return bent(design, alloy, sections, ShaftedBlade.ofStraightBars(design, sections), orientation, chordDeg);
    }

    private static SpaceBending bent(
            Design design,
            Alloy alloy,
            BladeSections sections,
            ShaftedBlade shafted,
            double orientation,
            double chordDeg) {
        RodGrid grid = RodGrid.between(design, BendingTest.CLAMP_MM, BendingTest.LOAD_MM, STEP_MM);
        double[] soft = new double[grid.nodes()];
        double[] stiff = new double[grid.nodes()];
        double[] turning = new double[grid.nodes()];
        double[] angle = new double[grid.nodes()];
        double turned = orientation;
        double last = BendingTest.CLAMP_MM;
        for (int step = grid.steps() - 1; step >= 0; step--) {
            for (int node = 3 * step + 2; node >= 3 * step; node--) {
                double level = grid.levelMm(node);
                double blend = Math.min(level, design.workingPartMm());
                turned += 2 * Math.PI * (level - last) * sections.turnsPerMm((Math.min(last, blend) + blend) / 2);
                last = level;
                SectionProperties section = shafted.section(level);
                double fourth = Math.pow(shafted.diameterMm(level), 4);
                double perUnit = 1 / (alloy.youngMpa() * fourth * shafted.bendingFactor(level));
                soft[node] = perUnit / section.iMin();
                stiff[node] = perUnit / section.iMax();
                double shear = alloy.shearModulusMpa() * fourth * shafted.torsionFactor(level);
                turning[node] = 1 / (shear * section.torsionConstant());
                angle[node] = turned + section.angleOfIMin();
            }
        }
        return solved(new SpaceMarch(grid, soft, stiff, turning, angle), grid.lengthMm(), chordDeg);
    }

    private static SpaceBending solved(SpaceMarch march, double length, double chordDeg) {
        double[] p = start(march, length);
        int steps = (int) Math.ceil(chordDeg / STEP_DEG);
        double reached = 0;
        for (int k = 1; k <= steps; k++) {
            double chord = Math.toRadians(chordDeg) * k / steps;
            if (k > 1) {
                p[0] *= Math.tan(chord) / Math.tan(reached);
            } else {
                p[0] *= Math.tan(chord);
            }
            settle(march, p, chord, length);
            reached = chord;
        }
        march.run(p[0], p[1], p[2]);
        return new SpaceBending(p[0], p[1], p[2], Math.toDegrees(march.endSlope()));
    }

    /** Force per tangent of the chord, by a small one. */
    private static double[] start(SpaceMarch march, double length) {
        double small = 1e-6;
        march.run(small, length, 0);
        return new double[] {small * length / march.y(), length, 0};
    }

    private static void settle(SpaceMarch march, double[] p, double chord, double length) {
        double tangent = Math.tan(chord);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double[] miss = miss(march, p, tangent);
            double[][] slope = new double[3][3];
            for (int by = 0; by < 3; by++) {
                double step = by == 0 ? 1e-6 * p[0] : 1e-6 * length;
                double[] moved = p.clone();
                moved[by] += step;
                double[] there = miss(march, moved, tangent);
                for (int row = 0; row < 3; row++) {
                    slope[row][by] = (there[row] - miss[row]) / step;
                }
            }
            LUDecomposition solver = new LUDecomposition(new Array2DRowRealMatrix(slope, false));
            if (!solver.getSolver().isNonSingular()) {
                break;
            }
            double[] change =
                    solver.getSolver().solve(new ArrayRealVector(miss, false)).toArray();
            for (int k = 0; k < 3; k++) {
                p[k] -= change[k];
            }
            if (Math.abs(miss[0]) + Math.abs(miss[1]) + Math.abs(miss[2]) < MISFIT * length) {
                return;
            }
        }
        throw new Unsolved("no equilibrium in space found with the chord at " + Math.toDegrees(chord) + " degrees");
    }

    private static double[] miss(SpaceMarch march, double[] p, double tangent) {
        march.run(p[0], p[1], p[2]);
        return new double[] {march.x() - p[1], march.z() - p[2], march.y() - tangent * march.x()};
    }

    /** Whether the mean over a turn is no good answer: unequal principal second moments that turn seldom where it bends. */
    public static boolean matters(Design design, BladeSections sections) {
        double end = Math.min(design.workingPartMm(), BendingTest.LOAD_MM);
        boolean unequal = false;
        double turns = 0;
        double step = (end - BendingTest.CLAMP_MM) / 16;
        for (int k = 0; k < 16 && step > 0; k++) {
            double level = BendingTest.CLAMP_MM + (k + 0.5) * step;
            SectionProperties section = sections.at(level);
            unequal |= section.iMax() > UNEQUAL * section.iMin();
            turns += step * sections.turnsPerMm(level);
        }
        return unequal && turns < OFTEN;
    }

    /**
     * Least and greatest moment over how the blade is turned in the clamp, as shares of their mean: the elastic answer.
     *
     * @throws Unsolved when no equilibrium is found
     */
    public static double[] spread(Design design, Alloy alloy, BladeSections sections) {
        double[] moment = new double[ORIENTATIONS];
        for (int k = 0; k < ORIENTATIONS; k++) {
            moment[k] = of(design, alloy, sections, Math.PI * k / ORIENTATIONS, BendingTest.ANGLE_DEG)
                    .momentNmm();
        }
        double mean = java.util.Arrays.stream(moment).average().orElseThrow();
        double low = java.util.Arrays.stream(moment).min().orElseThrow();
        double high = java.util.Arrays.stream(moment).max().orElseThrow();
        return new double[] {low / mean, high / mean};
    }
}
