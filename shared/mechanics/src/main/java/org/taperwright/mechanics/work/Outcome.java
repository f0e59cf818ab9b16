package org.taperwright.mechanics.work;

/**
 * What became of a computation. A window shows {@link Current} values plainly, {@link Outdated} ones marked as such,
 * and never another thing's numbers.
 */
public sealed interface Outcome<T> {
    /** The result of the present inputs. */
    record Current<T>(T value) implements Outcome<T> {}

    /** The result of earlier inputs of the same thing; a newer one is on its way. */
    record Outdated<T>(T value) implements Outcome<T> {}

    /** No result: the inputs have faults or the computation failed, with the reason in plain words. */
    record Failed<T>(String reason) implements Outcome<T> {}

    /** The user stopped it. */
    record Cancelled<T>() implements Outcome<T> {}
}
