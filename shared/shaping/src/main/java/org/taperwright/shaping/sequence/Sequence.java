package org.taperwright.shaping.sequence;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/**
 * Ordered steps for a kind of canal.
 *
 * @param name what people call it
 * @param canal the canal it is tried in
 * @param motor the motor that drives its powered steps
 * @param steps in order
 * @param note free text
 */
public record Sequence(String name, Optional<ThingId> canal, Optional<ThingId> motor, List<Step> steps, String note) {
    public Sequence {
        steps = List.copyOf(steps);
    }
}
