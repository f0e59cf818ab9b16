package org.taperwright.mechanics.assessment;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** An assessment, or the faults that prevent one. */
public sealed interface AssessmentResult {
    /** The design could be computed. */
    record Assessed(Assessment assessment) implements AssessmentResult {}

    /** It could not; at least one fault is impossible. */
    record Refused(List<Fault> faults) implements AssessmentResult {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
