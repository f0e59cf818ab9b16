package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.DeclaredMetric;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/** Share of the circle around the section that is free for chips. */
public final class ChipSpace extends DeclaredMetric {
    /** For the service loader. */
    public ChipSpace() {
        super(new Declaration(
                "chip-space",
                "Chip space",
                MetricGroup.CUTTING,
                50,
                "%",
                Direction.MORE,
                Standing.COMPUTED,
                "Share of the circle around the section that is free for chips.",
                "Geometry of the section"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("", "the room for chips"));
    }

    @Override
    public Reading read(Assessment assessment) {
        return Reading.of(100 * assessment.cutting().chipSpaceShare());
    }

    @Override
    public OptionalDouble glance(Glance at) {
        return OptionalDouble.of(100 * at.cutting().chipSpaceShare());
    }
}
