package org.taperwright.workbench.api;

import org.taperwright.mechanics.work.Progress;

/** A computation off the event thread: a pure function of what it captured, stopping when cancelled. */
@FunctionalInterface
public interface Work<T> {
    /** The result. */
    T run(Progress progress);
}
