package org.taperwright.workbench.platform;

import java.util.function.Consumer;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.history.StoringEvent;

/** Tells the user when edits cannot be stored, and asks whose version stands when two programs changed one thing. */
final class StoringWatch implements Consumer<StoringEvent> {
    private final EditHistory history;
    private boolean failing;

    StoringWatch(EditHistory history) {
        this.history = history;
    }

    @Override
    public void accept(StoringEvent event) {
        EventThread.INSTANCE.execute(() -> tell(event));
    }

    private void tell(StoringEvent event) {
        if (event instanceof StoringEvent.Failed failed) {
            if (!failing) {
                Notices.warn("Edits are not stored yet", failed.reason() + ". They are kept and tried again.");
            }
            failing = true;
        } else if (event instanceof StoringEvent.Stored) {
            failing = false;
        } else if (event instanceof StoringEvent.Conflicting conflicting) {
            OpenConflict.get().put(history, conflicting);
        } else if (event instanceof StoringEvent.LinkLost lost) {
            Notices.warn(
                    "The library is out of reach", lost.reason() + ". Edits are kept until it can be reached again.");
        } else if (event instanceof StoringEvent.LinkFound) {
            Notices.warn("The library can be reached again", "The edits that waited are being stored.");
        }
    }
}
