package org.taperwright.mechanics.section;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** An outline, perhaps mended with remarks, or the faults that prevent one. */
public sealed interface OutlineResult {
    /** The outline, with remarks on what was unusual or mended. */
    record Drawn(Outline outline, List<Fault> remarks) implements OutlineResult {
        public Drawn {
            remarks = List.copyOf(remarks);
        }
    }

    /** No outline; why. */
    record Refused(List<Fault> faults) implements OutlineResult {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
