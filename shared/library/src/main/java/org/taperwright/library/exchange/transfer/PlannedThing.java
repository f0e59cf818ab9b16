package org.taperwright.library.exchange.transfer;

import java.util.Optional;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/**
 * What is to become of a thing on offer.
 *
 * @param id its identifier
 * @param kind its kind
 * @param name what people call it
 * @param standing how it stands to the library
 * @param resolution what a person chose, where there is a choice; empty while nothing was chosen
 * @param fresh its new identifier, where both are kept
 */
public record PlannedThing(
        ThingId id,
        ThingKind kind,
        String name,
        Standing standing,
        Optional<Resolution> resolution,
        Optional<ThingId> fresh) {

    /** Whether a person has to choose. */
    public boolean contested() {
        return standing instanceof Standing.Changed || standing instanceof Standing.Other;
    }

    /**
     * The same with a choice.
     *
     * @throws IllegalArgumentException if theirs is to take the place of another kind of thing
     */
    PlannedThing resolved(Resolution choice) {
        if (!contested()) {
            return this;
        }
        if (standing instanceof Standing.Other && choice == Resolution.THEIRS) {
            throw new IllegalArgumentException(id + " is " + kind.one() + " and cannot take another kind's place");
        }
        Optional<ThingId> own = choice == Resolution.BOTH ? Optional.of(ThingId.fresh()) : Optional.empty();
        return new PlannedThing(id, kind, name, standing, Optional.of(choice), own);
    }

    /** Whether it comes in. */
    public boolean comesIn() {
        if (standing instanceof Standing.New) {
            return true;
        }
        return resolution.filter(choice -> choice != Resolution.OURS).isPresent();
    }
}
