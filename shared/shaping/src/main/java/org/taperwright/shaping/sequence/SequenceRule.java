package org.taperwright.shaping.sequence;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/** Plug-in point: a check of a sequence. Register an implementation by a service line. */
public interface SequenceRule {
    /** Identifier. */
    String id();

    /** One sentence on what it checks. */
    String explanation();

    /** The published source, or "common practice, no source". */
    String source();

    /** What deserves a look; where is "steps[i].field". */
    List<Fault> check(ArrangedSequence arranged);
}
