package org.taperwright.library.history;

/** A listener's place; closing it stops the calls. */
@FunctionalInterface
public interface Listening extends AutoCloseable {
    @Override
    void close();
}
