package org.taperwright.sequencer.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.sequencer.scene.SceneOrders;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.api.Desk;

/**
 * The sequence shown, the step selected in it, and a depth being tried; turns what is asked by mouse, keyboard or form
 * into named edits of the desk. Holds no component.
 */
final class SequenceBoard implements SceneOrders, SequenceKeys.Commands {
    private static final Comparator<Entry> SMALLEST_FIRST = Comparator.comparingInt(
                    (Entry entry) -> ((Instrument) entry.thing()).size())
            .thenComparing(entry -> entry.id());

    private record TriedDepth(int step, double mm) {}

    private final Desk desk;
    private final Runnable changed;
    private Optional<ThingId> shown = Optional.empty();
    private Optional<TriedDepth> tried = Optional.empty();
    private int selected;

    /**
     * Makes a board.
     *
     * @param changed called when the selected step or a tried depth changes without an edit
     */
    SequenceBoard(Desk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
    }

    /** Follows the desk's selection; begins at the first step of another sequence. */
    void follow() {
        Optional<ThingId> next = desk.selected(ThingKind.SEQUENCE)
                .or(() -> shown.filter(id -> desk.snapshot().entry(id).isPresent()))
                .or(() -> desk.snapshot().ofKind(ThingKind.SEQUENCE).stream()
                        .findFirst()
                        .map(Entry::id));
        if (!next.equals(shown)) {
            shown = next;
            selected = 0;
            tried = Optional.empty();
        }
    }

    /** Which sequence is shown. */
    Optional<ThingId> shown() {
        return shown;
    }

    /** Whether the sequence stands as stored, no depth being tried. */
    boolean settled() {
        return tried.isEmpty();
    }

    /** The sequence as stored. */
    Optional<Sequence> stored() {
        return shown.flatMap(id -> desk.snapshot().thing(id, Sequence.class));
    }

    /** The sequence with the depth being tried. */
    Optional<Sequence> sequence() {
        Optional<Sequence> stored = stored();
        return tried.flatMap(
                        depth -> stored.flatMap(sequence -> SequenceEdits.depth(sequence, depth.step(), depth.mm())))
                .map(SequenceEdits.Edit::after)
                .or(() -> stored);
    }

    /** Index of the selected step; -1 when there is no step. */
    int selected() {
        int steps = stored().map(sequence -> sequence.steps().size()).orElse(0);
        return Math.min(selected, steps - 1);
    }

    /** Makes an edit of the sequence shown. */
    void apply(Optional<SequenceEdits.Edit> edit) {
        tried = Optional.empty();
        shown.ifPresent(id -> edit.ifPresentOrElse(
                change -> desk.edit(change.name(), List.of(new Change.Put(id, change.after()))), changed));
    }

    /** Begins a new sequence in the library's first canal. */
    void begin() {
        Snapshot snapshot = desk.snapshot();
        Optional<ThingId> canal =
                snapshot.ofKind(ThingKind.CANAL).stream().findFirst().map(Entry::id);
        ThingId id = ThingId.fresh();
        Sequence sequence = new Sequence("New sequence", canal, Optional.empty(), List.of(), "");
        desk.edit("New sequence", List.of(new Change.Put(id, sequence)));
        desk.select(id);
    }

    @Override
    public void select(int step) {
        selected = Math.max(0, step);
        changed.run();
    }

    @Override
    public void tryDepth(int step, double depthMm) {
        tried = Optional.of(new TriedDepth(step, depthMm));
        changed.run();
    }

    @Override
    public void setDepth(int step, double depthMm) {
        apply(stored().flatMap(sequence -> SequenceEdits.depth(sequence, step, depthMm)));
    }

    @Override
    public void move(int from, int to) {
        Optional<SequenceEdits.Edit> edit = stored().flatMap(sequence -> SequenceEdits.move(sequence, from, to));
        if (edit.isPresent() && selected == from) {
            selected = to;
        }
        apply(edit);
    }

    @Override
    public void insert(int place, List<ThingId> instruments) {
        Optional<Sequence> stored = stored();
        List<ThingId> usable = instruments.stream()
                .filter(id -> desk.snapshot().thing(id, Instrument.class).isPresent())
                .toList();
        if (stored.isPresent() && !usable.isEmpty()) {
            selected = place + usable.size() - 1;
            apply(SequenceEdits.add(stored.get(), place, usable, desk.snapshot()));
        }
    }

    /** Working length of the sequence's canal, mm; 0 without one. */
    double workingLengthMm() {
        return stored().flatMap(Sequence::canal)
                .flatMap(id -> desk.snapshot().thing(id, Canal.class))
                .map(Canal::workingLengthMm)
                .orElse(0.0);
    }

    /** Instruments that a patency or recapitulation may use: those of the sequence, the smallest first, and the one selected. */
    List<FileChoice> files() {
        List<FileChoice> files = new ArrayList<>();
        Stream.concat(
                        stored().stream()
                                .flatMap(sequence -> sequence.steps().stream().flatMap(step -> step.uses().stream())),
                        desk.selected(ThingKind.INSTRUMENT).stream())
                .distinct()
                .flatMap(id -> desk.snapshot().entry(id).stream())
                .filter(entry -> entry.thing() instanceof Instrument)
                .sorted(SMALLEST_FIRST)
                .forEach(entry -> files.add(new FileChoice(entry.id(), entry.name())));
        return files;
    }

    @Override
    public void insertBetween(BetweenKind kind) {
        ThingId small = files().stream()
                .findFirst()
                .map(FileChoice::id)
                .or(() -> desk.snapshot().ofKind(ThingKind.INSTRUMENT).stream()
                        .min(SMALLEST_FIRST)
                        .map(Entry::id))
                .orElseGet(ThingId::fresh);
        insertStep(kind.usual(small, workingLengthMm()));
    }

    private void insertStep(Step step) {
        int place = selected() + 1;
        Optional<Sequence> stored = stored();
        if (stored.isPresent()) {
            selected = place;
            apply(SequenceEdits.insert(stored.get(), place, step));
        }
    }

    @Override
    public void selectBeside(int places) {
        int steps = stored().map(sequence -> sequence.steps().size()).orElse(0);
        select(Math.max(0, Math.min(steps - 1, selected() + places)));
    }

    @Override
    public void moveBy(int places) {
        move(selected(), selected() + places);
    }

    @Override
    public void deepenBy(double mm) {
        int step = selected();
        if (step >= 0) {
            sequence()
                    .ifPresent(sequence -> tryDepth(
                            step, Math.max(0, sequence.steps().get(step).depthMm(workingLengthMm()) + mm)));
        }
    }

    @Override
    public void settleDepth() {
        tried.ifPresent(depth -> setDepth(depth.step(), depth.mm()));
    }

    @Override
    public void removeSelected() {
        apply(stored().flatMap(sequence -> SequenceEdits.remove(sequence, selected())));
    }

    @Override
    public void insertSelected() {
        desk.selected(ThingKind.INSTRUMENT).ifPresent(id -> insert(selected() + 1, List.of(id)));
    }
}
