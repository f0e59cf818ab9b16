package org.taperwright.workbench.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.PastRevision;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;

/**
 * What every window works on: the library as it stands, the selection, edits by name with undo, and work off the event
 * thread. All methods are called, and all listeners are called back, on the event thread. Holds no class of the
 * platform, so that a panel opens in a bare frame in a test.
 */
public interface Desk {
    /** The library as it stands, every edit so far included. */
    Snapshot snapshot();

    /**
     * Why an edit could not be made: values out of the limits of what can be kept, or a library that may only be looked at.
     * Empty when it can be made.
     */
    List<Fault> faults(List<Change> changes);

    /**
     * Makes an edit if it can be made, for values that a user entered freely.
     *
     * @return why it was not made; empty when it was
     */
    default List<Fault> tryEdit(String name, List<Change> changes) {
        List<Fault> faults = faults(changes);
        if (faults.isEmpty()) {
            edit(name, changes);
        }
        return faults;
    }

    /**
     * Makes an edit: the snapshot changes at once, listeners are told, and it is stored in the background. Where the library
     * may only be looked at nothing changes, and the user is told.
     *
     * @throws IllegalArgumentException if a thing could not be kept; {@link #faults} tells beforehand
     */
    void edit(String name, List<Change> changes);

    /**
     * Makes an edit of many things: its changes are worked out and checked off the event thread. Nothing is edited if the
     * work is stopped.
     *
     * @param slot as for {@link #compute}
     * @param name the edit's name, once its changes are known
     * @param changes works them out
     * @param told receives on the event thread why the edit was not made; nothing when it was
     */
    void editMany(Object slot, String name, Work<List<Change>> changes, Consumer<Outcome<List<Fault>>> told);

    /** A thing's past, oldest first, each step with what it changed. Reads the disk: for use within {@link #compute}. */
    List<PastRevision> past(ThingId id);

    /**
     * Brings a thing back as it was at a step of its past, as an edit by name.
     *
     * @return why it could not be brought back; empty when it was
     */
    List<Fault> bringBack(Revision revision);

    /** The name of the edit that undo would take back. */
    Optional<String> nextUndo();

    /** The name of the edit that redo would make again. */
    Optional<String> nextRedo();

    /** Takes the last edit back. */
    void undo();

    /** Makes the edit last taken back again. */
    void redo();

    /** The thing selected last, if it still is in the library. */
    Optional<ThingId> selected();

    /** The thing of a kind selected last: what that kind's window shows. */
    Optional<ThingId> selected(ThingKind kind);

    /** Selects a thing. */
    void select(ThingId id);

    /** Selects a thing and brings the window of its kind to the front. */
    void open(ThingId id);

    /** Calls back after every change of the library. */
    Subscription onChange(Consumer<Snapshot> listener);

    /** Calls back after every selection. */
    Subscription onSelect(Consumer<ThingId> listener);

    /**
     * Runs work off the event thread. A newer call for the same slot supersedes the older, whose outcome is then not
     * delivered. Progress shows and can be cancelled when it takes over 100 ms.
     *
     * @param slot what the result is for, such as the panel asking; compared by identity
     * @param label what is being done, for people
     * @param work the computation
     * @param deliver receives the outcome on the event thread
     */
    <T> void compute(Object slot, String label, Work<T> work, Consumer<Outcome<T>> deliver);
}
