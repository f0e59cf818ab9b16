package org.taperwright.workbench.platform;

import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.taperwright.library.history.Choice;
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
            ask(conflicting);
        } else if (event instanceof StoringEvent.LinkLost lost) {
            Notices.warn(
                    "The library is out of reach", lost.reason() + ". Edits are kept until it can be reached again.");
        }
    }

    private void ask(StoringEvent.Conflicting conflicting) {
        String things = conflicting.clashes().stream()
                .map(clash -> clash.theirs().id() + ": changed by "
                        + clash.theirs().who() + " (" + clash.theirs().edit() + ")")
                .collect(Collectors.joining("\n"));
        String mine = "Keep mine";
        String theirs = "Take theirs";
        NotifyDescriptor question = new NotifyDescriptor(
                "Another program changed the same things before \"" + conflicting.edit() + "\" was stored:\n\n" + things
                        + "\n\nWhichever you choose, the other version stays in the thing's past.",
                "Two versions",
                NotifyDescriptor.DEFAULT_OPTION,
                NotifyDescriptor.QUESTION_MESSAGE,
                new Object[] {mine, theirs},
                mine);
        Object answer = DialogDisplayer.getDefault().notify(question);
        history.resolve(theirs.equals(answer) ? Choice.THEIRS : Choice.MINE);
    }
}
