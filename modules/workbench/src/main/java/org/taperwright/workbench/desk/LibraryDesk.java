package org.taperwright.workbench.desk;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.history.PastRevision;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.Revision;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.EditWork;
import org.taperwright.workbench.api.NamedEdit;
import org.taperwright.workbench.api.RefusedEdit;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.api.Work;

/** The desk over a library's history. What others change in the library arrives on the event thread too. */
public final class LibraryDesk implements Desk {
    /** How long the reading of a past waits for edits on their way to the disk. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final EditHistory history;
    private final Computations computations;
    private final Consumer<ThingId> opener;
    private final Listeners<Snapshot> changes = new Listeners<>();
    private final Listeners<ThingId> selections = new Listeners<>();
    private final Listeners<RefusedEdit> refusals = new Listeners<>();
    private final Map<ThingKind, ThingId> selectedByKind = new EnumMap<>(ThingKind.class);
    private Optional<ThingId> selected = Optional.empty();
    private Snapshot told;

    /**
     * A desk.
     *
     * @param history the library
     * @param workers where computations run
     * @param eventThread runs things on the event thread, at once if called there
     * @param display where computations show
     * @param opener brings the window of a thing to the front
     */
    public LibraryDesk(
            EditHistory history,
            Executor workers,
            Executor eventThread,
            WorkDisplay display,
            Consumer<ThingId> opener) {
        this.history = history;
        this.computations = new Computations(workers, eventThread, display);
        this.opener = opener;
        this.told = history.snapshot();
        history.onChange(any -> eventThread.execute(this::tell));
    }

    /** Tells of the newest snapshot, once, however many edits lie between. */
    private void tell() {
        Snapshot now = history.snapshot();
        if (now != told) {
            told = now;
            changes.tell(history::snapshot);
        }
    }

    @Override
    public Snapshot snapshot() {
        return history.snapshot();
    }

    @Override
    public List<Fault> faults(List<Change> changes) {
        return history.faults(changes);
    }

    @Override
    public List<Fault> tryEdit(String name, List<Change> made) {
        return history.tryEdit(name, made);
    }

    @Override
    public boolean edit(String name, List<Change> made) {
        List<Fault> faults = tryEdit(name, made);
        if (!faults.isEmpty()) {
            refusals.tell(() -> new RefusedEdit(name, faults));
            if (history.access() == Access.READER) {
                // windows that already show the edit are to show the library again
                changes.tell(history::snapshot);
            }
        }
        return faults.isEmpty();
    }

    @Override
    public Subscription onRefusal(Consumer<RefusedEdit> listener) {
        return refusals.add(listener);
    }

    @Override
    public void editMany(Object slot, String label, EditWork work, Consumer<Outcome<List<Fault>>> told) {
        compute(slot, label, progress -> made(work, progress), told);
    }

    private List<Fault> made(EditWork work, Progress progress) {
        while (true) {
            Snapshot library = history.snapshot();
            NamedEdit edit = work.of(library, progress);
            Optional<List<Fault>> made = history.tryEditFrom(library, edit.name(), edit.changes(), progress);
            if (made.isPresent()) {
                return made.get();
            }
        }
    }

    @Override
    public List<PastRevision> past(ThingId id) {
        history.flush(PATIENCE);
        return history.past(id);
    }

    @Override
    public List<Fault> bringBack(Revision revision) {
        return history.bringBack(revision);
    }

    @Override
    public Optional<String> nextUndo() {
        return history.nextUndo();
    }

    @Override
    public Optional<String> nextRedo() {
        return history.nextRedo();
    }

    @Override
    public void undo() {
        history.undo();
    }

    @Override
    public void redo() {
        history.redo();
    }

    @Override
    public Optional<ThingId> selected() {
        return selected.filter(this::present);
    }

    @Override
    public Optional<ThingId> selected(ThingKind kind) {
        return Optional.ofNullable(selectedByKind.get(kind)).filter(this::present);
    }

    private boolean present(ThingId id) {
        return snapshot().entry(id).isPresent();
    }

    @Override
    public void select(ThingId id) {
        snapshot().entry(id).ifPresent(entry -> {
            selected = Optional.of(id);
            selectedByKind.put(entry.kind(), id);
            selections.tell(() -> id);
        });
    }

    @Override
    public void open(ThingId id) {
        select(id);
        opener.accept(id);
    }

    @Override
    public Subscription onChange(Consumer<Snapshot> listener) {
        return changes.add(listener);
    }

    @Override
    public Subscription onSelect(Consumer<ThingId> listener) {
        return selections.add(listener);
    }

    @Override
    public <T> void compute(Object slot, String label, Work<T> work, Consumer<Outcome<T>> deliver) {
        computations.compute(slot, label, work, deliver);
    }
}
