package org.taperwright.shaping.passage;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/**
 * What each step does by geometry, and the remarks of the rules.
 *
 * @param steps one for each step, empty where no instrument works; none where the canal is impossible
 * @param remarks what the rules found
 */
public record GeometricPassage(List<Optional<StepGeometry>> steps, List<Fault> remarks) {
    public GeometricPassage {
        steps = List.copyOf(steps);
        remarks = List.copyOf(remarks);
    }
}
