package org.taperwright.workbench.api;

/** A listener's place; closing it stops the calls. */
@FunctionalInterface
public interface Subscription extends AutoCloseable {
    @Override
    void close();
}
