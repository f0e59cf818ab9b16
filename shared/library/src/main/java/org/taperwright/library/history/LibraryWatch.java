package org.taperwright.library.history;

import java.util.function.Consumer;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.StoreFailure;

/** One look after another at what others changed; tells when the library is out of reach, and when it is not any more. */
final class LibraryWatch {
    private final EditHistory history;
    private final StoringQueue queue;
    private final Consumer<StoringEvent> events;
    private boolean lost;

    LibraryWatch(EditHistory history, StoringQueue queue, Consumer<StoringEvent> events) {
        this.history = history;
        this.queue = queue;
        this.events = events;
    }

    synchronized void look() {
        try {
            history.refresh();
            if (history.access() == Access.READER) {
                history.lookAtAccess();
            }
            if (lost) {
                lost = false;
                events.accept(new StoringEvent.LinkFound());
                queue.retry();
            }
        } catch (StoreFailure failure) {
            if (!lost) {
                lost = true;
                events.accept(new StoringEvent.LinkLost(
                        String.valueOf(failure.getMessage()),
                        queue.waitingNames().size()));
            }
        }
    }
}
