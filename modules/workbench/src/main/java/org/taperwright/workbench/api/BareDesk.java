package org.taperwright.workbench.api;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.PastRevision;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;

/**
 * A desk over a library in memory that is never stored: opens a panel in a bare frame, for tests and for showing one
 * window alone. Work runs on one thread of its own.
 */
public final class BareDesk implements Desk, AutoCloseable {
    private final Deque<Edit> done = new ArrayDeque<>();
    private final Deque<Edit> undone = new ArrayDeque<>();
    private final Map<ThingKind, ThingId> selection = new EnumMap<>(ThingKind.class);
    private final List<Consumer<Snapshot>> changeListeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<ThingId>> selectListeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<RefusedEdit>> refusalListeners = new CopyOnWriteArrayList<>();
    private final Map<Object, Ticket> latest = new IdentityHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(run -> {
        Thread thread = new Thread(run, "bare desk");
        thread.setDaemon(true);
        return thread;
    });
    private Snapshot snapshot;
    private Optional<ThingId> selected = Optional.empty();
    private Optional<Fault> locked = Optional.empty();

    private record Edit(String name, Snapshot before, Snapshot after) {}

    /** A desk with these things, each under its identifier. */
    public BareDesk(Map<ThingId, ? extends Record> things) {
        Map<ThingId, Entry> entries = new HashMap<>();
        things.forEach((id, thing) -> entries.put(id, new Entry(id, thing, 1, Instant.EPOCH, "Open")));
        snapshot = new Snapshot(1, entries);
    }

    @Override
    public Snapshot snapshot() {
        return snapshot;
    }

    /** Lets nothing be edited from now on, for this reason, as in a library that one may only look at. */
    public void lock(Fault reason) {
        locked = Optional.of(reason);
    }

    @Override
    public List<Fault> faults(List<Change> changes) {
        List<Fault> faults = new ArrayList<>(locked.stream().toList());
        for (Change change : changes) {
            if (change instanceof Change.Put put) {
                faults.addAll(JsonForms.faults(put.id(), put.thing()));
            }
        }
        return faults;
    }

    @Override
    public List<Fault> tryEdit(String name, List<Change> changes) {
        List<Fault> faults = faults(changes);
        if (faults.isEmpty()) {
            make(name, changes);
        }
        return faults;
    }

    @Override
    public boolean edit(String name, List<Change> changes) {
        List<Fault> faults = tryEdit(name, changes);
        if (!faults.isEmpty()) {
            refusalListeners.forEach(listener -> listener.accept(new RefusedEdit(name, faults)));
        }
        return faults.isEmpty();
    }

    @Override
    public Subscription onRefusal(Consumer<RefusedEdit> listener) {
        refusalListeners.add(listener);
        return () -> refusalListeners.remove(listener);
    }

    private void make(String name, List<Change> changes) {
        long revision = snapshot.revision() + 1;
        Map<ThingId, Entry> put = new LinkedHashMap<>();
        Set<ThingId> takenOut = new HashSet<>();
        for (Change change : changes) {
            put.remove(change.id());
            if (change instanceof Change.Put each) {
                put.put(each.id(), new Entry(each.id(), each.thing(), revision, Instant.EPOCH, name));
            } else {
                takenOut.add(change.id());
            }
        }
        Edit edit = new Edit(name, snapshot, snapshot.with(revision, put.values(), takenOut));
        done.push(edit);
        undone.clear();
        show(edit.after);
    }

    @Override
    public void editMany(Object slot, String label, EditWork work, Consumer<Outcome<List<Fault>>> told) {
        Snapshot library = snapshot;
        this.<NamedEdit>compute(slot, label, progress -> work.of(library, progress), outcome -> {
            if (library != snapshot) {
                editMany(slot, label, work, told);
            } else if (outcome instanceof Outcome.Current<NamedEdit> current) {
                NamedEdit edit = current.value();
                told.accept(new Outcome.Current<>(
                        edit.changes().isEmpty() ? List.of() : tryEdit(edit.name(), edit.changes())));
            } else if (outcome instanceof Outcome.Failed<NamedEdit> failed) {
                told.accept(new Outcome.Failed<>(failed.reason()));
            } else {
                told.accept(new Outcome.Cancelled<>());
            }
        });
    }

    /** The states that undo could still reach and the present one, as a past. */
    @Override
    public List<PastRevision> past(ThingId id) {
        List<PastRevision> past = new ArrayList<>();
        Optional<Revision> before = Optional.empty();
        for (Snapshot each : states()) {
            Optional<Revision> now = revision(id, each, before);
            if (now.isPresent() && !now.equals(before)) {
                List<FieldChange> changes =
                        before.map(old -> PastRevision.between(old, now.get())).orElse(List.of());
                past.add(new PastRevision(now.get(), changes));
                before = now;
            }
        }
        return past;
    }

    private List<Snapshot> states() {
        List<Snapshot> states = new ArrayList<>();
        done.descendingIterator().forEachRemaining(edit -> states.add(edit.before));
        states.add(snapshot);
        return states;
    }

    private static Optional<Revision> revision(ThingId id, Snapshot state, Optional<Revision> before) {
        Optional<Revision> there = state.entry(id)
                .map(entry -> new Revision(
                        entry.revision(),
                        id,
                        entry.kind(),
                        new Content.Present(entry.thing()),
                        entry.edit(),
                        Instant.EPOCH,
                        "you"));
        return there.or(() -> before.map(old -> new Revision(
                state.revision(), id, old.kind(), new Content.TakenOut(), "Remove", Instant.EPOCH, "you")));
    }

    @Override
    public List<Fault> bringBack(Revision revision) {
        List<Change> changes = revision.content() instanceof Content.Present present
                ? List.of(new Change.Put(revision.id(), present.thing()))
                : List.of(new Change.Remove(revision.id()));
        return tryEdit("Bring back revision " + revision.revision(), changes);
    }

    @Override
    public Optional<String> nextUndo() {
        return Optional.ofNullable(done.peek()).map(Edit::name);
    }

    @Override
    public Optional<String> nextRedo() {
        return Optional.ofNullable(undone.peek()).map(Edit::name);
    }

    @Override
    public void undo() {
        if (!done.isEmpty()) {
            Edit edit = done.pop();
            undone.push(edit);
            show(edit.before);
        }
    }

    @Override
    public void redo() {
        if (!undone.isEmpty()) {
            Edit edit = undone.pop();
            done.push(edit);
            show(edit.after);
        }
    }

    @Override
    public Optional<ThingId> selected() {
        return selected.filter(id -> snapshot.entry(id).isPresent());
    }

    @Override
    public Optional<ThingId> selected(ThingKind kind) {
        return Optional.ofNullable(selection.get(kind))
                .filter(id -> snapshot.entry(id).isPresent());
    }

    @Override
    public void select(ThingId id) {
        snapshot.entry(id).ifPresent(entry -> {
            selected = Optional.of(id);
            selection.put(entry.kind(), id);
            selectListeners.forEach(listener -> listener.accept(id));
        });
    }

    @Override
    public void open(ThingId id) {
        select(id);
    }

    @Override
    public Subscription onChange(Consumer<Snapshot> listener) {
        changeListeners.add(listener);
        return () -> changeListeners.remove(listener);
    }

    @Override
    public Subscription onSelect(Consumer<ThingId> listener) {
        selectListeners.add(listener);
        return () -> selectListeners.remove(listener);
    }

    @Override
    public <T> void compute(Object slot, String label, Work<T> work, Consumer<Outcome<T>> deliver) {
        Ticket ticket = new Ticket();
        Ticket older = latest.put(slot, ticket);
        if (older != null) {
            older.superseded = true;
        }
        worker.execute(() -> {
            Outcome<T> outcome = ticket.superseded ? new Outcome.Cancelled<>() : outcome(work, ticket);
            SwingUtilities.invokeLater(() -> {
                if (latest.get(slot) == ticket) {
                    deliver.accept(outcome);
                }
            });
        });
    }

    /** Waits, off the event thread, until all work begun so far is delivered. */
    public void settle() throws InterruptedException {
        for (int round = 0; round < 2; round++) {
            try {
                SwingUtilities.invokeAndWait(() -> {});
                worker.submit(() -> {}).get();
                SwingUtilities.invokeAndWait(() -> {});
            } catch (ExecutionException | java.lang.reflect.InvocationTargetException fault) {
                throw new IllegalStateException("an empty task failed", fault);
            }
        }
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }

    private void show(Snapshot next) {
        snapshot = next;
        new ArrayList<>(changeListeners).forEach(listener -> listener.accept(next));
    }

    private static <T> Outcome<T> outcome(Work<T> work, Progress progress) {
        try {
            return new Outcome.Current<>(work.run(progress));
        } catch (WorkCancelled cancelled) {
            return new Outcome.Cancelled<>();
        } catch (RuntimeException fault) {
            return new Outcome.Failed<>(String.valueOf(fault.getMessage()));
        }
    }

    /** One computation's claim on its slot. */
    private static final class Ticket implements Progress {
        private volatile boolean superseded;

        @Override
        public void at(double fraction, String what) {
            // nobody watches a bare desk's progress
        }

        @Override
        public boolean cancelled() {
            return superseded;
        }
    }
}
