package org.taperwright.workbench.desk;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Work;

/**
 * Work off the event thread, one computation a slot. A newer one for the same slot cancels the running one, waits for it
 * to stop, and takes the place of any other that was waiting; so a drag with a hundred steps leaves two computations, not
 * a hundred. Called on the event thread; outcomes are delivered there.
 */
final class Computations {
    private final Executor workers;
    private final Executor eventThread;
    private final WorkDisplay display;
    private final Map<Object, Place> places = new IdentityHashMap<>();

    /** What goes on for one slot: the running computation, and the newest one behind it. */
    private static final class Place {
        private final Computation<?> running;
        private Runnable next = () -> {};

        private Place(Computation<?> running) {
            this.running = running;
        }
    }

    Computations(Executor workers, Executor eventThread, WorkDisplay display) {
        this.workers = workers;
        this.eventThread = eventThread;
        this.display = display;
    }

    <T> void compute(Object slot, String label, Work<T> work, Consumer<Outcome<T>> deliver) {
        Place place = places.get(slot);
        if (place == null) {
            begin(slot, label, work, deliver);
        } else {
            place.running.supersede();
            place.next = () -> begin(slot, label, work, deliver);
        }
    }

    private <T> void begin(Object slot, String label, Work<T> work, Consumer<Outcome<T>> deliver) {
        Computation<T> computation = new Computation<>(label, work, display);
        Place place = new Place(computation);
        places.put(slot, place);
        workers.execute(() -> {
            Outcome<T> outcome = computation.outcome();
            eventThread.execute(() -> {
                places.remove(slot);
                place.next.run();
                if (!computation.superseded()) {
                    deliver.accept(outcome);
                }
            });
        });
    }
}
