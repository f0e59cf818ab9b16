package org.taperwright.shaping.passage.stroke;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.placement.Entry;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;

/** One instrument's strokes in a canal in work. */
public final class StepWork {
    private static final double TIP_MM = 1;

    private final CanalInWork canal;
    private final WorkingInstrument instrument;
    private final PlacementSolver solver;
    private final Map<Third, Double> removed = new EnumMap<>(Third.class);
    private StrokeTorque torque = StrokeTorque.NONE;
    private double reserve = Double.POSITIVE_INFINITY;
    private double strain;
    private double strainLevel;
    private double roomFilled;
    private boolean settled = true;

    private StepWork(CanalInWork canal, WorkingInstrument instrument, double nodeSpacingMm) {
        this.canal = canal;
        this.instrument = instrument;
        solver = PlacementSolver.of(
                instrument.rod(), nodeSpacingMm, canal.now().directions().count());
        for (Third third : Third.values()) {
            removed.put(third, 0.0);
        }
    }

    /**
     * Works a canal.
     *
     * @param depthsMm depth of the tip in each stroke, at least one, mm from the orifice
     */
    public static StepOutcome run(
            CanalInWork canal,
            WorkingInstrument instrument,
            List<Double> depthsMm,
            Movement movement,
            ShapingConstants constants,
            double nodeSpacingMm,
            Progress progress) {
        double deepest =
                depthsMm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double bind = Entry.bindDepthMm(instrument.rod(), canal.now(), canal.support(), deepest);
        StepWork work = new StepWork(canal, instrument, nodeSpacingMm);
        DamageByLevel damage = DamageByLevel.none(instrument.rod().lengthMm());
        double engaged = 0;
        Placement last = null;
        for (int i = 0; i < depthsMm.size(); i++) {
            progress.check();
            double depth = depthsMm.get(i);
            boolean onwards = i > 0 && depth == depthsMm.get(i - 1);
            Stroke stroke =
                    canal.stroke(work.solver, instrument, Setting.straight(depth), movement, constants, onwards);
            work.note(stroke);
            damage.add(stroke.placement(), movement.bendingTurns(), instrument.cyclesAtStrain());
            engaged = i == 0 ? stroke.engagedMm() : engaged;
            last = stroke.placement();
        }
        if (last == null) {
            throw new IllegalArgumentException("a step has at least one stroke");
        }
        return work.outcome(bind, depthsMm.size(), damage, engaged, last);
    }

    private void note(Stroke stroke) {
        stroke.removedMm3().forEach((third, volume) -> removed.merge(third, volume, Double::sum));
        if (stroke.torque().totalNmm() > torque.totalNmm()) {
            torque = stroke.torque();
        }
        reserve = Math.min(reserve, stroke.torque().reserve());
        Placement placement = stroke.placement();
        int node = placement.mostStrainedNode();
        if (placement.strain(node) > strain) {
            strain = placement.strain(node);
            strainLevel = placement.levelMm(node);
        }
        roomFilled = Math.max(roomFilled, stroke.roomFilled());
        settled &= placement.settled();
    }

    private StepOutcome outcome(double bind, int strokes, DamageByLevel damage, double engaged, Placement last) {
        double first = 0;
        double second = 0;
        int tip = last.nodes() - 1;
        for (int i = tip; i >= 0 && last.levelMm(i) <= TIP_MM; i--) {
            first += last.loadFirst(i) * last.reachMm(i);
            second += last.loadSecond(i) * last.reachMm(i);
        }
        return new StepOutcome(
                bind,
                strokes,
                removed,
                torque,
                reserve,
                damage.greatest(),
                damage.worstLevelMm(),
                strain,
                strainLevel,
                engaged,
                roomFilled,
                Math.hypot(first, second),
                Math.hypot(last.firstMm(tip), last.secondMm(tip)),
                last,
                WallAfter.of(canal),
                settled);
    }
}
