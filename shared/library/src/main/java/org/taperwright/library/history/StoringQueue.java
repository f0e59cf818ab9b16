package org.taperwright.library.history;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.taperwright.library.store.AppendResult;
import org.taperwright.library.store.Clash;
import org.taperwright.library.store.Draft;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.StoreFailure;
import org.taperwright.mechanics.design.ThingId;

/**
 * Edits on their way to the disk, in order, one at a time. A failure keeps them and tries again after a growing pause; a
 * conflict keeps them until it is resolved. Thread-safe; events are told outside its lock.
 */
final class StoringQueue {
    private static final Duration FIRST_PAUSE = Duration.ofSeconds(1);
    private static final Duration LONGEST_PAUSE = Duration.ofSeconds(30);

    private final LibraryStore store;
    private final String who;
    private final Executor executor;
    private final Consumer<StoringEvent> events;

    private final Deque<PendingEdit> waiting = new ArrayDeque<>();
    private final Heads heads;
    private List<Clash> conflict = List.of();
    private boolean busy;
    private boolean pausing;
    private Duration pause = FIRST_PAUSE;

    StoringQueue(LibraryStore store, String who, Executor executor, Heads heads, Consumer<StoringEvent> events) {
        this.store = store;
        this.who = who;
        this.executor = executor;
        this.heads = heads;
        this.events = events;
    }

    synchronized void add(PendingEdit edit) {
        waiting.addLast(edit);
    }

    /** Lets the executor store what waits. */
    void start() {
        executor.execute(this::storeAll);
    }

    /** Tries again at once after a failure. */
    void retry() {
        synchronized (this) {
            pausing = false;
        }
        start();
    }

    private void storeAll() {
        for (Optional<PendingEdit> next = begin(); next.isPresent(); next = begin()) {
            events.accept(store(next.get()));
        }
    }

    private synchronized Optional<PendingEdit> begin() {
        if (busy || pausing || !conflict.isEmpty() || waiting.isEmpty()) {
            return Optional.empty();
        }
        busy = true;
        return Optional.of(waiting.peekFirst());
    }

    private synchronized void end() {
        busy = false;
        notifyAll();
    }

    private StoringEvent store(PendingEdit edit) {
        try {
            return ended(edit, store.append(edit.token(), edit.edit().name(), who, edit.at(), drafts(edit)));
        } catch (StoreFailure failure) {
            return failed(failure);
        } finally {
            end();
        }
    }

    private synchronized List<Draft> drafts(PendingEdit edit) {
        return edit.edit().replacements().stream()
                .map(each -> new Draft(each.id(), each.kind(), each.after(), heads.of(each.id())))
                .toList();
    }

    private synchronized StoringEvent ended(PendingEdit edit, AppendResult result) {
        pause = FIRST_PAUSE;
        if (result instanceof AppendResult.Conflicting conflicting) {
            conflict = conflicting.clashes();
            return new StoringEvent.Conflicting(edit.edit().name(), conflict);
        }
        List<Long> revisions = ((AppendResult.Appended) result).revisions();
        for (int i = 0; i < revisions.size(); i++) {
            heads.stored(edit.edit().replacements().get(i).id(), revisions.get(i));
        }
        waiting.removeFirst();
        return new StoringEvent.Stored(edit.edit().name(), waiting.size());
    }

    private synchronized StoringEvent failed(StoreFailure failure) {
        pausing = true;
        CompletableFuture.delayedExecutor(pause.toMillis(), TimeUnit.MILLISECONDS, executor)
                .execute(this::retry);
        Duration doubled = pause.multipliedBy(2);
        pause = doubled.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : doubled;
        return new StoringEvent.Failed(String.valueOf(failure.getMessage()), waiting.size());
    }

    /** Lets this program's edits stand after theirs; nothing of theirs is to be taken in. */
    synchronized List<Revision> keepMine() {
        conflict.forEach(clash -> heads.known(clash.mine().id(), clash.theirs().revision()));
        conflict = List.of();
        return List.of();
    }

    /** Drops this program's waiting edits of the things in conflict and returns the others' versions. */
    synchronized List<Revision> takeTheirs() {
        List<Revision> theirs = conflict.stream().map(Clash::theirs).toList();
        Set<ThingId> ids = new HashSet<>();
        for (Revision revision : theirs) {
            ids.add(revision.id());
            heads.known(revision.id(), revision.revision());
        }
        List<PendingEdit> kept = waiting.stream()
                .map(edit -> edit.without(ids))
                .filter(edit -> !edit.empty())
                .toList();
        waiting.clear();
        waiting.addAll(kept);
        conflict = List.of();
        notifyAll();
        return theirs;
    }

    /** Keeps storing from beginning, and reads what was stored since the last look. {@link #endLook} must follow. */
    List<Revision> beginLook() {
        long seen;
        synchronized (this) {
            if (!await(() -> !busy, LONGEST_PAUSE)) {
                throw new StoreFailure("the library is busy");
            }
            busy = true;
            seen = heads.seen();
        }
        try {
            return store.since(seen);
        } catch (StoreFailure failure) {
            endLook();
            throw failure;
        }
    }

    /**
     * The newest of those revisions for each thing that others changed and that no waiting edit touches. A waiting edit
     * of the same thing will meet the conflict when it is stored.
     */
    synchronized Collection<Revision> admit(List<Revision> stored) {
        Map<ThingId, Revision> newest = new HashMap<>();
        Set<ThingId> touched = new HashSet<>();
        waiting.forEach(edit -> edit.edit().replacements().forEach(each -> touched.add(each.id())));
        for (Revision revision : stored) {
            boolean others = heads.look(revision.revision());
            if (others && !touched.contains(revision.id())) {
                heads.known(revision.id(), revision.revision());
                newest.put(revision.id(), revision);
            }
        }
        return newest.values();
    }

    /** Lets storing go on. */
    void endLook() {
        end();
        start();
    }

    synchronized boolean inConflict() {
        return !conflict.isEmpty();
    }

    synchronized List<String> waitingNames() {
        return waiting.stream().map(edit -> edit.edit().name()).toList();
    }

    /** Waits until nothing waits, or a failure or conflict stands in the way, or the time is over. */
    void awaitRest(Duration most) {
        await(() -> !busy && (waiting.isEmpty() || pausing || !conflict.isEmpty()), most);
    }

    private synchronized boolean await(BooleanSupplier condition, Duration most) {
        long end = System.nanoTime() + most.toNanos();
        try {
            for (long left = most.toMillis(); left > 0 && !condition.getAsBoolean(); ) {
                wait(left);
                left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return condition.getAsBoolean();
    }
}
