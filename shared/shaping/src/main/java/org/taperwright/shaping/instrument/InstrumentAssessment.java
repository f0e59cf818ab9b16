package org.taperwright.shaping.instrument;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;

/**
 * What is computed of a catalogue entry: its design's assessment, and the widening that its values need where the design
 * is only assumed.
 *
 * @param assessment of its design
 * @param widening present when the design is assumed by type
 */
public record InstrumentAssessment(Assessment assessment, Optional<Widening> widening) {
    /** A metric's value, with a wider band where the design is assumed; an index that has no band gets none. */
    public Reading read(Metric metric) {
        Reading reading = metric.read(assessment);
        boolean bare = metric.standing() == Standing.INDEX && reading.band().isEmpty();
        return bare ? reading : widening.map(wider -> wider.of(reading)).orElse(reading);
    }

    /** A metric's standing: what follows from a design that is assumed is an estimate at best. */
    public Standing standing(Metric metric) {
        return widening.isPresent() && metric.standing() == Standing.COMPUTED ? Standing.ESTIMATE : metric.standing();
    }
}
