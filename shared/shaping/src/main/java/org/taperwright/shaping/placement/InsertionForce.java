package org.taperwright.shaping.placement;

import org.taperwright.shaping.canal.Centreline;

/**
 * The force that pushes an instrument on: what the energy of bending and wall rises by per depth, the handle moving with the
 * tip, {@code (E(z) - E(z - 0.1 mm)) / 0.1 mm}. Without friction, so an estimate from below; not defined where it is wedged.
 */
public final class InsertionForce {
    private static final double STEP_MM = 0.1;

    private static final double SETTLED_MM = 1e-9;

    private InsertionForce() {}

    /** The force at a placement that the solver has just made, N. */
    public static double of(
            PlacementSolver solver,
            Placement placement,
            Centreline line,
            WallSupport support,
            Springs springs,
            Setting setting) {
        Setting before = new Setting(setting.tipDepthMm() - STEP_MM, setting.tiltFirst(), setting.tiltSecond());
        // so little shallower that the placement just made is the best place to start from
        Placement shallower = solver.place(line, support, springs, before, SETTLED_MM, true);
        return (placement.bendingEnergyMj()
                        + placement.wallEnergyMj()
                        - shallower.bendingEnergyMj()
                        - shallower.wallEnergyMj())
                / STEP_MM;
    }
}
