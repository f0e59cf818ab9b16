package org.taperwright.shaping.passage.stroke;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/**
 * A sequence as it shapes a canal.
 *
 * @param steps what each step did, in order, up to the first that could not be made
 * @param canal what became of the canal; empty where the canal is impossible
 * @param faults why a step could not be made, or what to beware of in its numbers; where is "steps[i].field"
 */
public record ShapedSequence(List<StepOutcome> steps, Optional<CanalOutcome> canal, List<Fault> faults) {
    public ShapedSequence {
        steps = List.copyOf(steps);
        faults = List.copyOf(faults);
    }
}
