package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.cutting.Guidance;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * How well edges evenly around the axis, and lands that carry part of the side force, keep the blade in the middle
 * of the canal; only the order means something.
 */
public final class SelfCentring extends DeclaredMetric {
    /** For the service loader. */
    public SelfCentring() {
        super(new Declaration(
                "self-centring",
                "Self-centring",
                MetricGroup.GUIDANCE,
                30,
                "",
                Direction.MORE,
                Standing.INDEX,
                "How well edges evenly around the axis, and lands that carry part of the side force, keep the "
                        + "blade in the middle of the canal; only the order means something.",
                "Common practice, no source; share of the lands by the cutting model"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Guidance.selfCentring(assessment.cutting());
    }
}
