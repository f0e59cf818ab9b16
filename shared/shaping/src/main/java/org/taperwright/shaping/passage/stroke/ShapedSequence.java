package org.taperwright.shaping.passage.stroke;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.taperwright.mechanics.work.Fault;

/**
 * A sequence as it shapes a canal.
 *
 * @param byPlace what each step did, by its place from 0; a step that could not be made is absent and did nothing
 * @param canal what became of the canal; empty where the canal is impossible
 * @param faults why a step could not be made, or what to beware of in its numbers; where is "steps[i].field"
 */
public record ShapedSequence(
        SortedMap<Integer, StepOutcome> byPlace, Optional<CanalOutcome> canal, List<Fault> faults) {
    public ShapedSequence {
        byPlace = Collections.unmodifiableSortedMap(new TreeMap<>(byPlace));
        faults = List.copyOf(faults);
    }

    /** What the steps did that could be made, in order. */
    public List<StepOutcome> steps() {
        return List.copyOf(byPlace.values());
    }
}
