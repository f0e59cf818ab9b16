package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/**
 * One use of a piece, without anything about a patient.
 *
 * @param date when
 * @param canals how many canals it shaped
 * @param sequence the sequence followed, where one was
 * @param lifeSpent share of its fatigue life spent by it, where estimated
 * @param note free text
 */
public record Use(LocalDate date, int canals, Optional<ThingId> sequence, Optional<LifeSpent> lifeSpent, String note) {
    public Use {
        if (canals < 0) {
            throw new IllegalArgumentException("has fewer than no canals");
        }
    }
}
