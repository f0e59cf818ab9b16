package org.taperwright.workbench.desk;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.taperwright.workbench.api.Subscription;

/** Those who want to be told of something. */
final class Listeners<T> {
    private final List<Consumer<T>> all = new CopyOnWriteArrayList<>();

    Subscription add(Consumer<T> listener) {
        Consumer<T> place = listener::accept; // its own object, so the same listener can be added twice and closed once
        all.add(place);
        return () -> all.remove(place);
    }

    /** Tells all; each hears the news of that moment, since one told earlier may have made newer. */
    void tell(Supplier<T> news) {
        for (Consumer<T> each : all) {
            if (all.contains(each)) { // one told earlier may have closed this one
                each.accept(news.get());
            }
        }
    }
}
