package org.taperwright.shaping.passage.remark;

import java.util.List;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** Plug-in point: a check of a sequence as it shapes its canal. Register an implementation by a service line. */
public interface ShapedRule {
    /** Identifier. */
    String id();

    /** One sentence on what it checks. */
    String explanation();

    /** The published source, or that it is assumed. */
    String source();

    /** What deserves a look; where is "steps[i].field" or "canal". */
    List<Fault> check(ArrangedSequence arranged, ShapedSequence shaped);
}
