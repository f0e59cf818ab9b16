package org.taperwright.library.store;

import org.taperwright.mechanics.work.Fault;

/**
 * Something that a check found wrong or odd in a library.
 *
 * @param fault where, what, and what was expected; of weight {@link Fault.Weight#IMPOSSIBLE} when the library is not
 *     sound, {@link Fault.Weight#UNUSUAL} when it only deserves a look
 * @param mend how to mend it
 */
public record Finding(Fault fault, String mend) {
    /** Whether the library is not sound. */
    public boolean grave() {
        return fault.weight() == Fault.Weight.IMPOSSIBLE;
    }
}
