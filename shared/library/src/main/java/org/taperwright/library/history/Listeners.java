package org.taperwright.library.history;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** Who wants to be told. */
final class Listeners<T> {
    private final List<Consumer<T>> all = new CopyOnWriteArrayList<>();

    Listening add(Consumer<T> listener) {
        // a wrapper of its own, so that one listener added twice can be closed once
        Consumer<T> place = listener::accept;
        all.add(place);
        return () -> all.remove(place);
    }

    void tell(T what) {
        all.forEach(listener -> listener.accept(what));
    }
}
