package org.taperwright.shaping.passage.stroke;

import java.util.Arrays;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.placement.Placement;

/** Sums the torque of a stroke from the tip towards the handle, and finds the least reserve on the way. */
final class TorqueSum {
    private final WorkingInstrument instrument;
    private final ShapingConstants constants;
    private final double turns;
    private final double[] level;
    private final double[] apical;
    private int count;
    private double cutting;
    private double friction;
    private double ploughing;
    private double reserve = Double.POSITIVE_INFINITY;

    private TorqueSum(WorkingInstrument instrument, Movement movement, ShapingConstants constants, int nodes) {
        this.instrument = instrument;
        this.constants = constants;
        turns = movement.cuttingTurns();
        level = new double[nodes];
        apical = new double[nodes];
    }

    /**
     * The torque of a stroke; none where the instrument is not turned.
     *
     * @param gained volume gained per length at each station of the open space, mm²
     */
    static StrokeTorque of(
            Placement placement,
            Lumen lumen,
            double[] gained,
            WorkingInstrument instrument,
            Movement movement,
            ShapingConstants constants) {
        TorqueSum sum = new TorqueSum(instrument, movement, constants, placement.nodes());
        if (sum.turns <= 0) {
            return StrokeTorque.NONE;
        }
        int station = lumen.stations() - 1;
        for (int i = placement.nodes() - 1; i >= 0 && placement.depthMm(i) >= -1e-9; i--) {
            double border = i == 0 ? 0 : (placement.depthMm(i) + placement.depthMm(i - 1)) / 2;
            while (station >= 0 && (lumen.depthMm(station) > border || border <= 0)) {
                sum.cut(gained[station] * lumen.spacingMm() * (station == 0 ? 0.5 : 1));
                station--;
            }
            sum.rub(placement, i);
        }
        return new StrokeTorque(
                Arrays.copyOf(sum.level, sum.count),
                Arrays.copyOf(sum.apical, sum.count),
                sum.cutting,
                sum.friction,
                sum.reserve);
    }

    private void cut(double volume) {
        double energy = constants.cuttingMpa() * instrument.energyShare();
        cutting += StrokeTorque.cuttingNmm(energy, volume, turns);
    }

    private void rub(Placement placement, int node) {
        double here = placement.levelMm(node);
        double length = placement.depthMm(node) <= 1e-9 ? placement.reachMm(node) / 2 : placement.reachMm(node);
        double radius = placement.radiusMm(node);
        friction += length * constants.friction() * placement.load(node) * radius;
        double edges = instrument.edgesAt().applyAsDouble(here);
        ploughing += length * constants.edgeNPerMm() * edges * placement.engaged(node) * radius;
        level[count] = here;
        apical[count] = cutting + friction + ploughing;
        if (here >= StrokeTorque.RESERVE_FROM_MM - 1e-9 && apical[count] > 0) {
            reserve = Math.min(reserve, instrument.strengthNmm().applyAsDouble(here) / apical[count]);
        }
        count++;
    }
}
