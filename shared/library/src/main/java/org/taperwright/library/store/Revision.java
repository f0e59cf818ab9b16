package org.taperwright.library.store;

import java.time.Instant;
import org.taperwright.mechanics.design.ThingId;

/**
 * A step in a thing's past.
 *
 * @param revision its number, rising over the whole library
 * @param id the thing
 * @param kind the thing's kind
 * @param content what the thing became
 * @param edit the name of the edit
 * @param at when
 * @param who who made it
 */
public record Revision(
        long revision, ThingId id, ThingKind kind, Content content, String edit, Instant at, String who) {}
