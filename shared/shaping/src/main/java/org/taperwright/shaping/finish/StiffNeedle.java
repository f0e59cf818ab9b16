package org.taperwright.shaping.finish;

import java.util.List;
import java.util.Optional;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.placement.InsertionForce;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;

/**
 * A steel needle pushed down a canal in steps of 0.25 mm, as deep as force and strain allow. The force is what the energy rises by per
 * depth, and friction on the wall, {@code dE/dz + mu F}. Assumed, no source: a push of 1 N, a strain of 0.008 at which it stays bent, a
 * friction of 0.2, steel of 190 GPa, a length of 25 mm. Standing: index.
 */
public final class StiffNeedle {
    /** Greatest push, N. */
    public static final double FORCE_N = 1;
    /** Greatest strain. */
    public static final double STRAIN = 0.008;

    private static final double FRICTION = 0.2;
    private static final double YOUNG_MPA = 190_000;
    private static final double LENGTH_MM = 25;
    private static final double STEP_MM = 0.25;
    private static final double SPACING_MM = 0.1;

    private StiffNeedle() {}

    /** How deep a gauge goes in a canal as it now is, at most to where instrumentation ends. */
    public static NeedleReach of(NeedleGauge gauge, CanalInWork canal, InscribedCircles circles) {
        double end = canal.geometry().endDepthMm();
        Fit flexible = Fit.of(circles, gauge.outerMm(), 0, end);
        Way way = way(gauge.outerMm(), gauge.boreMm(), canal, flexible.depthMm());
        NeedleReach.Stop free = flexible.binds() ? NeedleReach.Stop.WIDTH : NeedleReach.Stop.END;
        return new NeedleReach(
                gauge, flexible.depthMm(), way.depthMm(), way.stop().orElse(free), flexible.gapMm());
    }

    /**
     * How far a needle is pushed.
     *
     * @param depthMm depth of its tip, mm
     * @param stop whether force or strain ended its way; empty where neither did
     */
    public record Way(double depthMm, Optional<NeedleReach.Stop> stop) {}

    /** How far a needle of any diameters, mm, is pushed towards a depth to which its circle fits. */
    public static Way way(double outerMm, double boreMm, CanalInWork canal, double deepestMm) {
        PlacementSolver solver = PlacementSolver.of(
                rod(outerMm, boreMm), SPACING_MM, canal.now().directions().count());
        Centreline line = canal.line();
        double reached = 0;
        int steps = (int) Math.ceil(deepestMm / STEP_MM - 1e-9);
        for (int i = 1; i <= steps; i++) {
            double depth = Math.min(deepestMm, i * STEP_MM);
            Setting setting = Setting.straight(depth);
            Placement placement = solver.place(line, canal.support(), Springs.FIRM, setting);
            double push = InsertionForce.of(solver, placement, line, canal.support(), Springs.FIRM, setting)
                    + FRICTION * placement.totalForceN();
            if (placement.strain(placement.mostStrainedNode()) > STRAIN) {
                return new Way(reached, Optional.of(NeedleReach.Stop.STRAIN));
            }
            if (push > FORCE_N) {
                return new Way(reached, Optional.of(NeedleReach.Stop.FORCE));
            }
            reached = depth;
        }
        return new Way(reached, Optional.empty());
    }

    private static Rod rod(double d, double boreMm) {
        double unit = YOUNG_MPA * Math.PI / 64 * (1 - Math.pow(boreMm / d, 4));
        // it cuts nowhere: the range of levels that cut is empty
        return Rod.of(
                LENGTH_MM,
                1,
                0,
                List.of(new RodSection(0, d, unit, d), new RodSection(LENGTH_MM + 1, d, unit, d)),
                MomentLaw.LINEAR);
    }
}
