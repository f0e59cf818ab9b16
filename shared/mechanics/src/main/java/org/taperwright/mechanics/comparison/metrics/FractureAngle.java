package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Angle turned at fracture. */
public final class FractureAngle extends SampledMetric {
    /** For the service loader. */
    public FractureAngle() {
        super(
                new Declaration(
                        "fracture-angle",
                        "Angle at fracture",
                        MetricGroup.TORSION,
                        50,
                        "°",
                        Direction.MORE,
                        Standing.ESTIMATE,
                        "Angle turned at the handle's beginning when the weakest free level breaks.",
                        "Twisting test after ISO 3630-1; band mostly from the shear strain at fracture, of which little is known"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("snaps after", "the turning"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.twistingSpread().fractureAngleDeg();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().fractureAngleDeg();
    }
}
