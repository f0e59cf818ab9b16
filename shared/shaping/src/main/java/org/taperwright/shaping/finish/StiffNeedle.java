package org.taperwright.shaping.finish;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
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
 * A steel needle pushed down a canal in steps of a millimetre and, where it is stopped, of 0.25 mm, as deep as force and strain
 * allow. The force is what the energy rises by per depth, and friction on the wall, {@code dE/dz + mu F}. {@link Assumed} are the push,
 * the strain at which it stays bent and the friction; steel of 190 GPa, a length of 25 mm. Standing: index.
 */
public final class StiffNeedle {
    private static final double YOUNG_MPA = 190_000;
    private static final double LENGTH_MM = 25;
    private static final double STEP_MM = 0.25;
    private static final double LONG_STEP_MM = 1;
    private static final double SPACING_MM = 0.1;

    private final CanalInWork canal;
    private final PlacementSolver solver;
    private final double deepestMm;
    private final Map<Double, Pushed> known = new HashMap<>();

    private StiffNeedle(Rod rod, CanalInWork canal, double deepestMm) {
        this.canal = canal;
        this.deepestMm = deepestMm;
        solver = PlacementSolver.of(rod, SPACING_MM, canal.now().directions().count());
    }

    /**
     * Constants that nobody knows; all assumed, no source.
     *
     * @param forceN greatest push, N
     * @param strain strain at which the needle stays bent
     * @param friction coefficient of friction on the wall
     */
    public record Assumed(double forceN, double strain, double friction) {
        /** In the middle. */
        public static final Assumed USUAL = new Assumed(1, 0.008, 0.2);
        /** With which it goes least deep. */
        public static final Assumed LEAST = new Assumed(0.5, 0.006, 0.35);
        /** With which it goes deepest. */
        public static final Assumed MOST = new Assumed(2, 0.01, 0.1);
    }

    /**
     * How far a needle is pushed.
     *
     * @param depthMm depth of its tip, mm
     * @param stop whether force or strain ended its way; empty where neither did
     */
    public record Way(double depthMm, Optional<NeedleReach.Stop> stop) {}

    private record Pushed(double strain, double risingN, double onWallN) {}

    /** How deep a gauge goes in a canal as it now is, at most to where instrumentation ends. */
    public static NeedleReach of(NeedleGauge gauge, CanalInWork canal, InscribedCircles circles) {
        double end = canal.geometry().endDepthMm();
        Fit flexible = Fit.of(circles, gauge.outerMm(), 0, end);
        StiffNeedle needle = new StiffNeedle(rod(gauge.outerMm(), gauge.boreMm()), canal, flexible.depthMm());
        Way way = needle.way(Assumed.USUAL);
        NeedleReach.Stop free = flexible.binds() ? NeedleReach.Stop.WIDTH : NeedleReach.Stop.END;
        return new NeedleReach(
                gauge,
                flexible.depthMm(),
                way.depthMm(),
                new Band(
                        Math.min(way.depthMm(), needle.way(Assumed.LEAST).depthMm()),
                        Math.max(way.depthMm(), needle.way(Assumed.MOST).depthMm())),
                way.stop().orElse(free),
                flexible.gapMm());
    }

    /** How far a needle of any diameters, mm, is pushed towards a depth to which its circle fits. */
    public static Way way(double outerMm, double boreMm, CanalInWork canal, double deepestMm) {
        return new StiffNeedle(rod(outerMm, boreMm), canal, deepestMm).way(Assumed.USUAL);
    }

    /** By long steps to where it is stopped, and there by short ones. */
    private Way way(Assumed assumed) {
        Way far = way(0, LONG_STEP_MM, assumed);
        return far.stop().isEmpty() ? far : way(far.depthMm(), STEP_MM, assumed);
    }

    private Way way(double fromMm, double stepMm, Assumed assumed) {
        double reached = fromMm;
        while (reached < deepestMm - 1e-9) {
            double depth = Math.min(deepestMm, reached + stepMm);
            Pushed pushed = known.computeIfAbsent(depth, this::pushed);
            if (pushed.strain() > assumed.strain()) {
                return new Way(reached, Optional.of(NeedleReach.Stop.STRAIN));
            }
            if (pushed.risingN() + assumed.friction() * pushed.onWallN() > assumed.forceN()) {
                return new Way(reached, Optional.of(NeedleReach.Stop.FORCE));
            }
            reached = depth;
        }
        return new Way(reached, Optional.empty());
    }

    private Pushed pushed(double depthMm) {
        Setting setting = Setting.straight(depthMm);
        Placement placement = solver.place(canal.line(), canal.support(), Springs.FIRM, setting);
        double onWall = placement.totalForceN();
        double rising = onWall == 0
                ? 0
                : InsertionForce.of(solver, placement, canal.line(), canal.support(), Springs.FIRM, setting);
        return new Pushed(placement.strain(placement.mostStrainedNode()), rising, onWall);
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
