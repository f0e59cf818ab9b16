package org.taperwright.workbench.ui;

import java.util.function.Consumer;
import java.util.function.Supplier;

/** Runs something off the event thread where there is no desk to ask, and delivers its result on the event thread. */
@FunctionalInterface
public interface Background {
    /** Runs the work and delivers what it gave. */
    <T> void run(Supplier<T> work, Consumer<T> deliver);
}
