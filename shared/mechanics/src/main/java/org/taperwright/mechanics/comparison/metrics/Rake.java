package org.taperwright.mechanics.comparison.metrics;

import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * Mean angle between the leading face and the radius in the cross-section; negative when the face leans
 * backwards.
 */
public final class Rake extends DeclaredMetric {
    /** For the service loader. */
    public Rake() {
        super(new Declaration(
                "rake",
                "Rake of the section",
                MetricGroup.CUTTING,
                20,
                "°",
                Direction.MORE,
                Standing.COMPUTED,
                "Mean angle between the leading face and the radius in the cross-section; negative when the face "
                        + "leans backwards.",
                "Geometry of the section; chord of 5 % of the diameter behind each edge"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(assessment.cutting().rakeDeg());
    }

    @Override
    public OptionalDouble glance(Glance at) {
        return OptionalDouble.of(at.cutting().rakeDeg());
    }
}
