package org.taperwright.shaping.passage.stroke;

import java.util.function.DoubleUnaryOperator;
import org.taperwright.shaping.placement.rod.Rod;

/**
 * What the engine asks of an instrument.
 *
 * @param rod the rod that it is
 * @param strengthNmm torque that it bears by level, N mm
 * @param cyclesAtStrain turns to fracture by strain amplitude; infinite where it does not tire
 * @param edgesAt number of cutting edges by level
 * @param roomMm2At room for chips in the flutes by level, mm²
 * @param wearShare how fast it wears the wall, over the blade that the wear coefficient is for
 * @param energyShare energy that a volume costs it, over that blade's
 */
public record WorkingInstrument(
        Rod rod,
        DoubleUnaryOperator strengthNmm,
        DoubleUnaryOperator cyclesAtStrain,
        DoubleUnaryOperator edgesAt,
        DoubleUnaryOperator roomMm2At,
        double wearShare,
        double energyShare) {
    /** What of it lies above a level, as one whose tip is at that level: the rest stands outside the canal. */
    WorkingInstrument above(double levelMm) {
        return new WorkingInstrument(
                rod.above(levelMm),
                level -> strengthNmm.applyAsDouble(level + levelMm),
                cyclesAtStrain,
                level -> edgesAt.applyAsDouble(level + levelMm),
                level -> roomMm2At.applyAsDouble(level + levelMm),
                wearShare,
                energyShare);
    }
}
