package org.taperwright.library.store;

import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;

/**
 * A revision about to be stored.
 *
 * @param id the thing
 * @param kind its kind
 * @param thing what it is to become; empty takes it out
 * @param basedOn the revision of the thing that the maker of the edit knew, 0 when it knew none
 */
public record Draft(ThingId id, ThingKind kind, Optional<Record> thing, long basedOn) {}
