package org.taperwright.shaping.passage.stroke;

import java.util.Map;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.placement.Placement;

/**
 * What a step did.
 *
 * @param bindDepthMm how deep the instrument would have gone before it first touched all round, mm
 * @param strokes number of strokes
 * @param removedMm3 volume removed by third, mm³ (computed, from the wear assumed)
 * @param torque of the stroke with the greatest (index)
 * @param reserve least torsional reserve of all strokes (index)
 * @param damage share of life that this step spent where most is spent (index)
 * @param damageLevelMm where that is, mm from the tip
 * @param greatestStrain of all strokes (computed)
 * @param strainLevelMm where that was, mm from the tip
 * @param engagedFirstMm length engaged in the first stroke, mm (computed)
 * @param roomFilled greatest share of the flutes' room that a stroke's loose chips fill; above 1 they have none (estimate)
 * @param tipForceN net side force on the last millimetre in the last stroke, N (computed)
 * @param tipOffsetMm how far the tip then stood off the canal's axis, mm (computed)
 * @param last where the instrument lay in the last stroke
 * @param wall the wall as the step left it
 * @param settled whether every placement settled within its bounds
 */
public record StepOutcome(
        double bindDepthMm,
        int strokes,
        Map<Third, Double> removedMm3,
        StrokeTorque torque,
        double reserve,
        double damage,
        double damageLevelMm,
        double greatestStrain,
        double strainLevelMm,
        double engagedFirstMm,
        double roomFilled,
        double tipForceN,
        double tipOffsetMm,
        Placement last,
        WallAfter wall,
        boolean settled) {
    public StepOutcome {
        removedMm3 = Third.ordered(removedMm3);
    }

    /** Volume removed, mm³. */
    public double wholeRemovedMm3() {
        return removedMm3.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
