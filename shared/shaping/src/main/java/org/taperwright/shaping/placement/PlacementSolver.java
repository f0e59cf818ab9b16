package org.taperwright.shaping.placement;

import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.placement.rod.Rod;

/**
 * Places one rod in canals. Newton's method on the energy with Gauss and Newton's matrix and the wall's active directions, each
 * step shortened until the energy falls (Armijo), in passes between which levels and axial push follow; every loop is bounded.
 * Keeps its arrays, so that placing makes no garbage but the answer; not for two threads at once.
 */
public final class PlacementSolver {
    private static final int MOST_ITERATIONS = 120;
    private static final int MOST_PASSES = 12;
    private static final int MOST_HALVINGS = 30;
    private static final double ARMIJO = 1e-4;
    private static final double SETTLED_LEVEL_MM = 1e-5;
    /** A change of levels that passes do not leave when they have settled. */
    private static final double LEVEL_MOVED_MM = 1e-3;

    private static final double EARLY_MM = 1e-4;
    /** Nearness from which whole steps are tried, and how many are. */
    private static final double NEAR_MM = 1e-3;

    private static final int MOST_TOGETHER = 40;
    /** No canal is so wide that a longer step could be right, mm. */
    private static final double LONGEST_MM = 1;

    private static final double EARLY_SHARE = 1e-2;
    /** Energies closer than this share of their parts are the same in double arithmetic. */
    private static final double ROUNDING = 1e-13;

    private final Rod rod;
    private final Workspace w;
    private final Bending bending;
    private final Wall wall;
    private int iterations;

    private PlacementSolver(Rod rod, int nodes, int directions) {
        this.rod = rod;
        w = new Workspace(nodes, directions);
        w.spacing = rod.lengthMm() / (nodes - 1);
        bending = new Bending(w, rod.law());
        wall = new Wall(w);
    }

    /**
     * A solver for a rod.
     *
     * @param spacingMm wanted distance of nodes, made even over the rod's length
     * @param directions number of the wall's directions
     */
    public static PlacementSolver of(Rod rod, double spacingMm, int directions) {
        int cells = Math.max(8, (int) Math.round(rod.lengthMm() / spacingMm));
        return new PlacementSolver(rod, cells + 1, directions);
    }

    /** Places the rod from the canal's axis on, until no offset moves by more than 1e-9 mm. */
    public Placement place(Centreline line, WallSupport support, Springs springs, Setting setting) {
        return place(line, support, springs, setting, 1e-9, false);
    }

    /**
     * Places the rod.
     *
     * @param toleranceMm greatest move of an offset at which it has settled
     * @param onwards whether to start from the last placement, which must have been to the same depth, rather than from the
     *     canal's axis
     */
    public Placement place(
            Centreline line,
            WallSupport support,
            Springs springs,
            Setting setting,
            double toleranceMm,
            boolean onwards) {
        begin(line, setting, onwards);
        surround(support);
        follow(springs);
        iterations = 0;
        boolean settled = settle(Math.max(toleranceMm, NEAR_MM)) && together(springs, toleranceMm);
        if (!settled) {
            settled = inPasses(springs, toleranceMm);
        }
        bending.energy(w.u);
        wall.loads(w.u);
        return Placement.of(w, bending.bent(), wall.energy(w.u), iterations, settled);
    }

    /**
     * Near the end levels and axial push follow with every step, and every step is taken whole: both shrink to nothing together.
     * Answers false, with no harm done, where they do not.
     */
    private boolean together(Springs springs, double toleranceMm) {
        double before = Double.MAX_VALUE;
        for (int i = 0; i < MOST_TOGETHER; i++) {
            double change = levels();
            follow(springs);
            assemble(w.u);
            double move = step();
            if (!(Math.max(move, change) < before)) {
                return false;
            }
            before = Math.max(move, change);
            trial(1);
            w.swap();
            if (move < toleranceMm && change < SETTLED_LEVEL_MM) {
                return true;
            }
        }
        return false;
    }

    /** From anywhere: levels follow only when offsets have settled. */
    private boolean inPasses(Springs springs, double toleranceMm) {
        double change = Double.MAX_VALUE;
        for (int pass = 0; pass < MOST_PASSES && change > SETTLED_LEVEL_MM; pass++) {
            // levels will move by more than this, so that more would be lost
            settle(Math.max(toleranceMm, Math.min(EARLY_MM, change * EARLY_SHARE)));
            change = levels();
            follow(springs);
        }
        return settle(toleranceMm) && change < LEVEL_MOVED_MM;
    }

    private void begin(Centreline line, Setting setting, boolean onwards) {
        double h = w.spacing;
        double start = setting.tipDepthMm() - rod.lengthMm();
        w.tilt1 = setting.tiltFirst();
        w.tilt2 = setting.tiltSecond();
        for (int i = 0; i < w.nodes; i++) {
            double s = i == w.nodes - 1 ? setting.tipDepthMm() : start + i * h;
            w.s[i] = s;
            double here1 = line.integralFirstTo(s);
            double here2 = line.integralSecondTo(s);
            w.kappa1[i] = (line.integralFirstTo(s + h / 2) - line.integralFirstTo(s - h / 2)) / h;
            w.kappa2[i] = (line.integralSecondTo(s + h / 2) - line.integralSecondTo(s - h / 2)) / h;
            w.change1[i] = (line.integralFirstTo(s + h) - 2 * here1 + line.integralFirstTo(s - h)) / (h * h);
            w.change2[i] = (line.integralSecondTo(s + h) - 2 * here2 + line.integralSecondTo(s - h)) / (h * h);
            w.cell[i] = i == 0 ? h / 2 : i == w.nodes - 1 ? 0 : h;
            w.reach[i] = i == 0 || i == w.nodes - 1 ? h / 2 : h;
            if (!onwards) {
                w.u[2 * i] = 0;
                w.u[2 * i + 1] = 0;
                w.x[i] = setting.tipDepthMm() - s;
                w.push[i] = 0;
            }
        }
    }

    /** Takes the wall as it is at the nodes. */
    private void surround(WallSupport support) {
        for (int k = 0; k < w.count; k++) {
            w.cos[k] = support.directions().cos(k);
            w.sin[k] = support.directions().sin(k);
        }
        for (int i = 0; i < w.nodes; i++) {
            w.leastSupport[i] = support.at(w.s[i], w.support, i * w.count);
        }
    }

    /** Takes the rod at the levels as they now are. */
    private void follow(Springs springs) {
        int section = 0;
        for (int i = w.nodes - 1; i >= 0; i--) {
            double x = w.x[i];
            section = rod.section(x, section);
            double radius = rod.wallRadiusMm(x, section);
            w.radius[i] = radius;
            w.half[i] = rod.diameterMm(x, section) / 2;
            w.stiffness[i] = rod.stiffnessNmm2(x, section);
            w.stiffnessSlope[i] = rod.stiffnessSlope(x, section);
            w.radiusSlope[i] = rod.radiusSlope(section);
            w.spring[i] = rod.cuts(x) ? springs.cutting(radius) : springs.stiffnessMpaPerMm();
            w.leastGap[i] = w.leastSupport[i] - radius;
        }
    }

    /** Newton's method at fixed levels. */
    private boolean settle(double toleranceMm) {
        double energy = assemble(w.u);
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double move = step();
            if (move == Double.MAX_VALUE) {
                return false;
            }
            double fall = 0;
            for (int j = BandedCholesky.PAD; j < w.step.length; j++) {
                fall += w.slope[j] * w.step[j];
            }
            energy = descend(energy, fall, Math.min(1, LONGEST_MM / move));
            if (move < toleranceMm) {
                return true;
            }
        }
        return false;
    }

    /** Newton's step by the equations assembled; answers its greatest move, beyond all numbers where there is none. */
    private double step() {
        iterations++;
        System.arraycopy(w.slope, 0, w.step, 0, w.step.length);
        if (!BandedCholesky.factor(w.band, w.unknowns)) {
            return Double.MAX_VALUE;
        }
        BandedCholesky.solve(w.band, w.step, w.unknowns);
        double move = 0;
        for (int j = BandedCholesky.PAD; j < w.step.length; j++) {
            move = Math.max(move, Math.abs(w.step[j]));
        }
        return move;
    }

    private double descend(double energy, double fall, double longest) {
        double length = longest;
        double allowed = ROUNDING * (Math.abs(energy) + w.push[0] * rod.lengthMm());
        trial(length);
        // a step that is taken whole is most likely good, so that its equations are assembled at once
        boolean assembled = length == 1;
        double next = assembled ? assemble(w.trial) : energy(w.trial);
        for (int k = 0; k < MOST_HALVINGS && !(next <= energy - ARMIJO * length * fall + allowed); k++) {
            length /= 2;
            trial(length);
            next = energy(w.trial);
            assembled = false;
        }
        if (!assembled) {
            next = assemble(w.trial);
        }
        w.swap();
        return next;
    }

    private double energy(double[] u) {
        return bending.energy(u) + wall.energy(u);
    }

    private void trial(double length) {
        for (int j = 0; j < w.unknowns; j++) {
            w.trial[j + 2] = w.u[j + 2] - length * w.step[j + BandedCholesky.PAD];
        }
    }

    private double assemble(double[] u) {
        w.clearEquations();
        return bending.assemble(u) + wall.assemble(u);
    }

    /** Levels and axial push along the rod as it now lies; answers the greatest change of a level, mm. */
    private double levels() {
        bending.energy(w.u);
        double change = 0;
        double level = 0;
        double push = 0;
        double rate = 0;
        w.stretch[w.nodes - 1] = w.stretch[w.nodes - 2];
        w.push[w.nodes - 1] = 0;
        for (int i = w.nodes - 2; i >= 0; i--) {
            level += w.spacing * (w.stretch[i] + w.stretch[i + 1]) / 2;
            double before = rate;
            rate = bending.stiffening(i) * w.stretch[i];
            push += w.spacing * (rate + before) / 2;
            w.push[i] = push;
            change = Math.max(change, Math.abs(level - w.x[i]));
            w.x[i] = level;
        }
        return change;
    }
}
