package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.cutting.CuttingTest;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * Share of the chip space that the loose chips of one turn, to-and-fro or stroke fill under a side force of 1 N
 * per mm.
 */
public final class FluteRoomFilled extends SampledMetric {
    /** For the service loader. */
    public FluteRoomFilled() {
        super(new Declaration(
                "flute-room-filled",
                "Flute room filled per turn or stroke",
                MetricGroup.CUTTING,
                14,
                "%",
                Direction.LESS,
                Standing.ESTIMATE,
                "Share of the chip space that the loose chips of one turn, to-and-fro or stroke fill under a "
                        + "side force of 1 N per mm.",
                "Oblique cutting by Merchant and Stabler, wedge indentation by Hill; dentine from reviews, from "
                        + "memory"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return CuttingTest.sampled(
                assessment.cutting(), assessment.design().motion(), result -> 100 * result.roomFilled());
    }

    @Override
    public double value(Assessment assessment) {
        return 100
                * CuttingTest.run(assessment.cutting(), assessment.design().motion())
                        .roomFilled();
    }
}
