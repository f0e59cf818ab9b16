package org.taperwright.mechanics.measured;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** A fit, or why there is none. */
public sealed interface FitResult {
    /** The constants could be fitted. */
    record Fitted(AlloyFit fit) implements FitResult {}

    /** They could not. */
    record Refused(List<Fault> faults) implements FitResult {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
