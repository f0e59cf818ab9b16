package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.Subscription;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.SeriesLooks;

/**
 * The design in the window: as the library has it, and as it is being tried while a person drags or holds an arrow. A
 * trial is never stored; entering it makes one named edit.
 */
final class OpenDesign implements AutoCloseable {
    private final Desk desk;
    private final List<Consumer<OpenDesign>> listeners = new ArrayList<>();
    private final Subscription changes;
    private final Subscription selections;
    private Optional<ThingId> id;
    private Optional<Design> stored = Optional.empty();
    private Optional<Design> tried = Optional.empty();
    private SeriesLook look = new SeriesLook(0);
    private List<Fault> refusals = List.of();
    private KnownAlloys alloys;

    OpenDesign(Desk desk) {
        this.desk = desk;
        alloys = desk.snapshot().alloys();
        id = desk.selected(ThingKind.DESIGN).or(this::first);
        stored = read();
        look = readLook();
        changes = desk.onChange(snapshot -> refresh());
        selections = desk.onSelect(selected -> {
            if (exists(selected)) {
                refresh();
            }
        });
    }

    /** Its identifier, when a design is open. */
    Optional<ThingId> id() {
        return stored.isPresent() ? id : Optional.empty();
    }

    /** The design to show: the trial if there is one. */
    Optional<Design> shown() {
        return tried.isPresent() ? tried : stored;
    }

    /** The alloys that it can name. */
    KnownAlloys alloys() {
        return alloys;
    }

    /** Why the last edit was not made; empty when it was. */
    List<Fault> refusals() {
        return refusals;
    }

    /** Whether what is shown is only a trial. */
    boolean trying() {
        return tried.isPresent();
    }

    /** How its curves look, as in every other window. */
    SeriesLook look() {
        return look;
    }

    /** Shows the design with a change, without storing it. */
    void tryOut(UnaryOperator<Design> change) {
        stored.ifPresent(design -> {
            tried = Optional.of(change.apply(design));
            tell();
        });
    }

    /** Forgets the trial. */
    void drop() {
        if (tried.isPresent()) {
            tried = Optional.empty();
            tell();
        }
    }

    /**
     * Changes the design by a named edit; nothing happens when it would stay the same. One with values that cannot be kept
     * is not made, and {@link #refusals} says why.
     */
    void edit(String name, UnaryOperator<Design> change) {
        tried = Optional.empty();
        refusals = List.of();
        if (stored.isEmpty() || id.isEmpty()) {
            return;
        }
        Design changed = change.apply(stored.get());
        if (changed.equals(stored.get())) {
            tell();
        } else {
            refusals = desk.tryEdit(name, List.of(new Change.Put(id.get(), changed)));
            if (!refusals.isEmpty()) {
                tell();
            }
        }
    }

    /** Calls back whenever what is to be shown has changed. */
    void onShown(Consumer<OpenDesign> listener) {
        listeners.add(listener);
    }

    /** Tells all listeners once what there is, after they have been added. */
    void begin() {
        tell();
    }

    @Override
    public void close() {
        changes.close();
        selections.close();
    }

    private Optional<Design> read() {
        return id.flatMap(known -> desk.snapshot().thing(known, Design.class));
    }

    private boolean exists(ThingId design) {
        return desk.snapshot().thing(design, Design.class).isPresent();
    }

    /** What to show before anything is selected, so that a window does not open empty: the first comparison's datum. */
    private Optional<ThingId> first() {
        return desk.snapshot().ofKind(ThingKind.COMPARISON).stream()
                .map(entry -> ((SavedComparison) entry.thing()).datum())
                .filter(this::exists)
                .findFirst()
                .or(() -> desk.snapshot().ofKind(ThingKind.DESIGN).stream()
                        .map(Entry::id)
                        .findFirst());
    }

    private SeriesLook readLook() {
        return id().map(SeriesLooks.of(desk.snapshot())::of).orElse(new SeriesLook(0));
    }

    private void refresh() {
        Optional<ThingId> now = desk.selected(ThingKind.DESIGN).or(() -> id.filter(this::exists));
        Optional<Design> before = stored;
        SeriesLook lookBefore = look;
        KnownAlloys alloysBefore = alloys;
        boolean other = !now.equals(id);
        id = now;
        stored = read();
        look = readLook();
        alloys = desk.snapshot().alloys();
        if (other || !stored.equals(before) || !look.equals(lookBefore) || !alloys.equals(alloysBefore)) {
            tried = Optional.empty();
            tell();
        }
    }

    private void tell() {
        List.copyOf(listeners).forEach(listener -> listener.accept(this));
    }
}
