package org.taperwright.library.history;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Contents;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.Names;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.StoreFailure;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * The library as it is worked on: an immutable snapshot that every edit replaces at once, and undo and redo of every edit
 * by name. Undo never rewrites the past: it adds revisions that put the older records back. The walk lasts for the session;
 * the past itself is in the store.
 *
 * <p>Edits are stored in order by the executor given: with {@code Runnable::run} an edit that returned is safe on the disk;
 * with a thread of its own the caller never waits for the disk, and {@link #flush} or {@link #close} do. When storing fails
 * the edits stay in memory and are tried again; listeners are told.
 *
 * <p>All methods may be called from any thread. Listeners are called on the thread that made the edit, outside the lock.
 */
public final class EditHistory implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(EditHistory.class.getName());
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Fault ONLY_LOOKED_AT =
            Fault.impossible("library", "may only be looked at by you", "expected its owner to let you edit it");

    private final LibraryStore store;
    private final Clock clock;
    private final StoringQueue queue;
    private final Listeners<Snapshot> changes = new Listeners<>();
    private final Listeners<StoringEvent> storing = new Listeners<>();
    private final ReentrantLock lock = new ReentrantLock();
    private final UndoWalk walk = new UndoWalk();
    private final List<Revision> unreadable;
    private volatile Access access;
    private volatile Snapshot snapshot;

    /**
     * Takes over a store: {@link #close} closes it.
     *
     * @param store the library
     * @param who who edits, as kept with each edit
     * @param executor where edits are stored
     * @param clock when
     */
    public EditHistory(LibraryStore store, String who, Executor executor, Clock clock) {
        Contents contents = store.contents();
        this.store = store;
        this.clock = clock;
        this.queue = new StoringQueue(store, who, executor, new Heads(contents), this::stored);
        this.snapshot = contents.snapshot();
        this.unreadable = contents.unreadable();
        this.access = store.access();
    }

    /** The library as it stands, every edit so far included. */
    public Snapshot snapshot() {
        return snapshot;
    }

    /** Things present in the store whose form could not be read when it was opened; they are not in the snapshot. */
    public List<Revision> unreadable() {
        return unreadable;
    }

    /**
     * Makes an edit that can be made. Changes that change nothing are left out; if none is left there is no edit.
     *
     * @return the library with the edit
     * @throws IllegalArgumentException if it could not be made; {@link #tryEdit} says why instead
     */
    public Snapshot edit(String name, List<Change> changed) {
        List<Fault> faults = tryEdit(name, changed);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.get(0).sentence());
        }
        return snapshot;
    }

    /**
     * Makes an edit as {@link #edit} does, if it can be made.
     *
     * @return why it was not made; empty when it was
     */
    public List<Fault> tryEdit(String name, List<Change> changed) {
        List<Fault> faults = faults(changed);
        if (faults.isEmpty()) {
            make(() -> replacing(name, afterEach(changed)));
        }
        return faults;
    }

    /**
     * Makes an edit that was worked out from a library, if it can be made and the library still stands so.
     *
     * @return why it was not made, nothing when it was; empty when the library stands otherwise, nothing was changed, and the
     *     edit is to be worked out anew
     * @throws org.taperwright.mechanics.work.WorkCancelled when the progress says so, before anything was changed
     */
    public Optional<List<Fault>> tryEditFrom(Snapshot base, String name, List<Change> changed, Progress progress) {
        List<Fault> faults = faults(changed);
        progress.check();
        if (!faults.isEmpty()) {
            return Optional.of(faults);
        }
        AtomicBoolean current = new AtomicBoolean();
        make(() -> {
            current.set(snapshot == base);
            return current.get() ? replacing(name, afterEach(changed)) : Optional.empty();
        });
        return current.get() ? Optional.of(List.of()) : Optional.empty();
    }

    private static Map<ThingId, Optional<Record>> afterEach(List<Change> changed) {
        Map<ThingId, Optional<Record>> after = new LinkedHashMap<>();
        for (Change change : changed) {
            after.put(change.id(), change instanceof Change.Put put ? Optional.of(put.thing()) : Optional.empty());
        }
        return after;
    }

    private Optional<MadeEdit> replacing(String name, Map<ThingId, Optional<Record>> after) {
        List<Replacement> replacements = after.entrySet().stream()
                .map(each -> replacement(each.getKey(), each.getValue()))
                .filter(each -> !each.changesNothing())
                .toList();
        if (replacements.isEmpty()) {
            return Optional.empty();
        }
        MadeEdit edit = new MadeEdit(name, replacements);
        walk.add(edit);
        return Optional.of(edit);
    }

    /** What the user may do with the library, as far as is known: its owner may give rights and take them meanwhile. */
    public Access access() {
        return access;
    }

    /** Asks anew what the user may do. Reads the disk. */
    void lookAtAccess() {
        access = store.access();
    }

    private void stored(StoringEvent event) {
        if (event instanceof StoringEvent.Failed || access == Access.READER) {
            try {
                lookAtAccess();
            } catch (StoreFailure unreachable) {
                LOG.log(Level.FINE, "what the user may do is not known now", unreachable);
            }
        }
        storing.tell(event);
    }

    /** Why a thing could not be kept; empty when it can. */
    public List<Fault> faults(ThingId id, Record thing) {
        return store.faults(id, thing);
    }

    /** Why an edit could not be made; empty when it can. */
    public List<Fault> faults(List<Change> changed) {
        if (access == Access.READER) {
            return List.of(ONLY_LOOKED_AT);
        }
        List<Fault> faults = new ArrayList<>();
        for (Change change : changed) {
            if (change instanceof Change.Put put) {
                faults.addAll(faults(put.id(), put.thing()));
                kindFault(put.id(), ThingKind.of(put.thing())).ifPresent(faults::add);
            }
        }
        return faults;
    }

    private Optional<Fault> kindFault(ThingId id, ThingKind kind) {
        return snapshot.entry(id)
                .filter(now -> now.kind() != kind)
                .map(now -> Fault.impossible(
                        "id", id + " is that of " + now.kind().one(), "expected that of " + kind.one()));
    }

    private Replacement replacement(ThingId id, Optional<Record> after) {
        Optional<Record> before = snapshot.entry(id).map(Entry::thing);
        if (before.isPresent() && after.isPresent() && ThingKind.of(before.get()) != ThingKind.of(after.get())) {
            throw new IllegalArgumentException(id + " is "
                    + ThingKind.of(before.get()).one() + " and cannot become "
                    + ThingKind.of(after.get()).one());
        }
        return new Replacement(id, before, after);
    }

    /** The name of the edit that undo would take back. */
    public Optional<String> nextUndo() {
        return locked(walk::nextUndo);
    }

    /** The name of the edit that redo would make again. */
    public Optional<String> nextRedo() {
        return locked(walk::nextRedo);
    }

    /** Takes the last edit back, if there is one. */
    public Snapshot undo() {
        return make(() -> walk.stepBack().map(MadeEdit::reversed));
    }

    /** Makes the edit last taken back again, if there is one. */
    public Snapshot redo() {
        return make(() -> walk.stepForward().map(MadeEdit::repeated));
    }

    /** A thing's stored past, oldest first. Reads the disk; an edit still on its way there is not yet among it. */
    public List<Revision> pastOf(ThingId id) {
        return store.pastOf(id);
    }

    /** As {@link #pastOf}, each step with what it changed. Reads the disk. */
    public List<PastRevision> past(ThingId id) {
        return PastRevision.of(store.pastOf(id));
    }

    /**
     * Brings a thing back as it was at a step of its past, as an edit that can be undone: what came after stays in the
     * past. A step at which the thing was taken out takes it out again.
     *
     * @return why it could not be brought back; empty when it was, or when it stands so already
     */
    public List<Fault> bringBack(Revision past) {
        if (past.content() instanceof Content.Unreadable unreadable) {
            return unreadable.faults();
        }
        List<Change> changed = List.of(
                past.content() instanceof Content.Present present
                        ? new Change.Put(past.id(), present.thing())
                        : new Change.Remove(past.id()));
        return tryEdit("Bring back " + nameOf(past) + " as of revision " + past.revision(), changed);
    }

    private String nameOf(Revision past) {
        return past.content() instanceof Content.Present present
                ? Names.of(present.thing())
                : snapshot.entry(past.id()).map(Entry::name).orElse(past.id().value());
    }

    /** Calls back after every change of the library. */
    public Listening onChange(Consumer<Snapshot> listener) {
        return changes.add(listener);
    }

    /** Calls back with what becomes of edits on their way to the disk, on the storing thread. */
    public Listening onStoring(Consumer<StoringEvent> listener) {
        return storing.add(listener);
    }

    /** Says whose version stands after {@link StoringEvent.Conflicting}; storing goes on. */
    public void resolve(Choice choice) {
        Snapshot before = snapshot;
        lock.lock();
        try {
            accept(
                    switch (choice) {
                        case MINE -> queue.keepMine();
                        case THEIRS -> queue.takeTheirs();
                    });
        } finally {
            lock.unlock();
        }
        queue.start();
        tellUnlessSame(before);
    }

    /** Takes in what other programs changed since the last look. Reads the disk. */
    public void refresh() {
        Snapshot before = snapshot;
        List<Revision> stored = queue.beginLook();
        try {
            lock.lock();
            try {
                accept(queue.admit(stored));
            } finally {
                lock.unlock();
            }
        } finally {
            queue.endLook();
        }
        tellUnlessSame(before);
    }

    /**
     * Looks from time to time for what other programs changed, and tells those who listen to storing when the library cannot
     * be reached and when it can be again.
     *
     * @param executor where it looks
     * @param every how long from the end of one look to the next
     */
    public Listening watch(ScheduledExecutorService executor, Duration every) {
        LibraryWatch watch = new LibraryWatch(this, queue, storing::tell);
        ScheduledFuture<?> times =
                executor.scheduleWithFixedDelay(watch::look, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
        return () -> times.cancel(false);
    }

    private void accept(Collection<Revision> theirs) {
        if (!theirs.isEmpty()) {
            walk.forget(theirs.stream().map(Revision::id).collect(Collectors.toSet()));
            snapshot = NextSnapshot.of(snapshot, theirs);
        }
    }

    private Snapshot make(Supplier<Optional<MadeEdit>> step) {
        Snapshot before = snapshot;
        Snapshot after;
        lock.lock();
        try {
            step.get().ifPresent(this::apply);
            after = snapshot;
        } finally {
            lock.unlock();
        }
        if (after != before) {
            queue.start();
            changes.tell(after);
        }
        return after;
    }

    private void apply(MadeEdit edit) {
        Instant at = clock.instant();
        snapshot = NextSnapshot.of(snapshot, edit, at);
        queue.add(new PendingEdit(edit, at));
    }

    private void tellUnlessSame(Snapshot before) {
        Snapshot now = snapshot;
        if (now != before) {
            changes.tell(now);
        }
    }

    private <T> T locked(Supplier<T> question) {
        lock.lock();
        try {
            return question.get();
        } finally {
            lock.unlock();
        }
    }

    /**
     * Waits until every edit so far is stored, trying failed ones again, at most as long as given.
     *
     * @return whether all are; if not, they still wait
     */
    public boolean flush(Duration most) {
        queue.retry();
        queue.awaitRest(most);
        return queue.waitingNames().isEmpty();
    }

    /**
     * Stores what waits and closes the store. A conflict not resolved is settled by adding this program's version after
     * the other's, so that both stay in the past.
     *
     * @throws StoreFailure if edits could not be stored; it names them
     */
    @Override
    public void close() {
        if (queue.inConflict()) {
            queue.keepMine();
        }
        boolean all = flush(PATIENCE);
        List<String> left = queue.waitingNames();
        store.close();
        if (!all) {
            throw new StoreFailure("not stored: " + String.join(", ", left));
        }
    }
}
