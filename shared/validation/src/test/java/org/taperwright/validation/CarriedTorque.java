package org.taperwright.validation;

import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.Stroke;
import org.taperwright.shaping.passage.stroke.StrokeTorque;
import org.taperwright.shaping.passage.stroke.WorkingInstrument;
import org.taperwright.shaping.placement.Placement;

/**
 * Torque as the reference's program sums it. It takes load, radius and engaged share from the nodes to the canal's stations, and
 * beyond the tip, where there is no instrument, it keeps the tip's values on to the canal's end. Its own definition has no torque
 * there; ours has none. Adding what it adds brings the two together, which shows that nothing else differs.
 */
record CarriedTorque(double totalNmm, double cuttingNmm, double frictionNmm, double reserve) {
    static CarriedTorque of(
            Stroke stroke, WorkingInstrument instrument, ShapingConstants constants, double canalLengthMm) {
        Placement placement = stroke.placement();
        int tip = placement.nodes() - 1;
        double radius = placement.radiusMm(tip);
        double carried = canalLengthMm - placement.depthMm(tip);
        double rubbing = carried * constants.friction() * placement.load(tip) * radius;
        double ploughing = carried
                * constants.edgeNPerMm()
                * instrument.edgesAt().applyAsDouble(0)
                * placement.engaged(tip)
                * radius;
        StrokeTorque torque = stroke.torque();
        double reserve = Double.POSITIVE_INFINITY;
        double[] level = torque.levelsMm();
        double[] apical = torque.apicalNmm();
        for (int i = 0; i < level.length; i++) {
            if (level[i] >= StrokeTorque.RESERVE_FROM_MM - 0.01) {
                double acts = apical[i] + rubbing + ploughing;
                reserve = Math.min(reserve, instrument.strengthNmm().applyAsDouble(level[i]) / acts);
            }
        }
        return new CarriedTorque(
                torque.totalNmm() + rubbing + ploughing, torque.cuttingNmm(), torque.frictionNmm() + rubbing, reserve);
    }
}
