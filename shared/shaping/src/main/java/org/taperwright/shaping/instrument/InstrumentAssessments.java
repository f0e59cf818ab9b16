package org.taperwright.shaping.instrument;

import java.util.Optional;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.work.Progress;

/** Assesses catalogue entries: as their designs, with wider bands where a design is only assumed. */
public final class InstrumentAssessments {
    private InstrumentAssessments() {}

    /** The assessment of an entry; empty when its design cannot be computed, for which see {@link Assessments#of}. */
    public static Optional<InstrumentAssessment> of(Instrument instrument, Progress progress) {
        return Assessments.of(instrument.design(), progress) instanceof AssessmentResult.Assessed assessed
                ? Optional.of(new InstrumentAssessment(assessed.assessment(), Widening.of(instrument)))
                : Optional.empty();
    }
}
