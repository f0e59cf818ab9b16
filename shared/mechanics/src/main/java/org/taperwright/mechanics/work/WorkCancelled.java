package org.taperwright.mechanics.work;

/** Thrown out of a computation whose result is no longer wanted. */
public final class WorkCancelled extends RuntimeException {
    public WorkCancelled() {
        super("cancelled", null, false, false);
    }
}
