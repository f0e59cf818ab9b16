package org.taperwright.library.exchange.transfer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.FormDifference;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Names;
import org.taperwright.library.store.Room;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * What an import would do, before it does anything. Of the things on offer it holds no more than how they stand to the
 * library; {@link #changes} reads the file again.
 *
 * @param offer the file
 * @param things each thing on offer, by identifier, in the order of the file
 * @param remarks what deserves a look
 * @param bad how many rows of a table have faults of their own and stay out
 */
public record ImportPlan(Offer offer, Map<ThingId, PlannedThing> things, List<FileFault> remarks, long bad) {
    private static final int MOST_CHANGES = 20;

    public ImportPlan {
        things = Collections.unmodifiableMap(new LinkedHashMap<>(things));
        remarks = List.copyOf(remarks);
    }

    /** What came of planning. */
    public sealed interface Result {}

    /** Planned. */
    public record Planned(ImportPlan plan) implements Result {}

    /** The file as a whole cannot be taken; why. */
    public record Refused(List<FileFault> faults) implements Result {
        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /** Ends the reading of a file that offers more than there is room for. */
    private static final class NoRoom extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Fault fault;

        NoRoom(Fault fault) {
            super(fault.sentence(), null, false, false);
            this.fault = fault;
        }
    }

    /**
     * Plans the import of a file into a library, if this program has room for its things beside those of the library.
     *
     * @throws org.taperwright.mechanics.work.WorkCancelled when the progress says so
     */
    public static Result of(Offer offer, Snapshot library, Progress progress) {
        return of(offer, library, Room.ofThisProgram(), progress);
    }

    /** As {@link #of(Offer, Snapshot, Progress)}, with so much room. */
    public static Result of(Offer offer, Snapshot library, Room room, Progress progress) {
        Optional<Fault> tooLarge = room.tooLarge(offer.size());
        if (tooLarge.isPresent()) {
            return refused(offer, tooLarge.get());
        }
        int held = library.entries().size();
        int[] own = {0};
        Map<ThingId, PlannedThing> things = new LinkedHashMap<>();
        try {
            Offer.Given given = offer.each(
                    item -> {
                        PlannedThing planned = planned(item, library);
                        own[0] += things.put(item.id(), planned) == null && planned.standing() instanceof Standing.New
                                ? 1
                                : 0;
                        // those that the library has take no more room there, but the plan of them does
                        room.tooMany(own[0], held)
                                .or(() -> room.tooMany(things.size(), 0))
                                .ifPresent(fault -> {
                                    throw new NoRoom(fault);
                                });
                    },
                    progress);
            return given.faults().isEmpty()
                    ? new Planned(new ImportPlan(offer, things, given.remarks(), given.bad()))
                    : new Refused(given.faults());
        } catch (NoRoom full) {
            return refused(offer, full.fault);
        }
    }

    private static Result refused(Offer offer, Fault fault) {
        return new Refused(List.of(new FileFault(offer.name(), 1, 1, fault)));
    }

    private static PlannedThing planned(LibraryBundle.Item item, Snapshot library) {
        ThingKind kind = ThingKind.of(item.thing());
        return new PlannedThing(
                item.id(),
                kind,
                Names.of(item.thing()),
                standing(item, kind, library),
                Optional.empty(),
                Optional.empty());
    }

    private static Standing standing(LibraryBundle.Item item, ThingKind kind, Snapshot library) {
        Optional<Entry> ours = library.entry(item.id());
        if (ours.isEmpty()) {
            return new Standing.New();
        }
        if (ours.get().kind() != kind) {
            return new Standing.Other(ours.get().kind());
        }
        if (ours.get().thing().equals(item.thing())) {
            return new Standing.Same();
        }
        List<FieldChange> changes = FormDifference.between(ours.get().thing(), item.thing());
        return changes.isEmpty()
                ? new Standing.Same()
                : new Standing.Changed(changes.subList(0, Math.min(MOST_CHANGES, changes.size())));
    }

    /** The things that a person has to choose about and has not. */
    public List<PlannedThing> open() {
        return things.values().stream()
                .filter(thing -> thing.contested() && thing.resolution().isEmpty())
                .toList();
    }

    /** The plan with a choice for one thing. */
    public ImportPlan with(ThingId id, Resolution choice) {
        Map<ThingId, PlannedThing> chosen = new LinkedHashMap<>(things);
        chosen.computeIfPresent(id, (same, thing) -> thing.resolved(choice));
        return new ImportPlan(offer, chosen, remarks, bad);
    }

    /** The plan with one choice for all that is open; where theirs would take another kind's place, both are kept. */
    public ImportPlan withAll(Resolution choice) {
        Map<ThingId, PlannedThing> chosen = new LinkedHashMap<>(things);
        for (PlannedThing thing : open()) {
            boolean other = thing.standing() instanceof Standing.Other && choice == Resolution.THEIRS;
            chosen.put(thing.id(), thing.resolved(other ? Resolution.BOTH : choice));
        }
        return new ImportPlan(offer, chosen, remarks, bad);
    }

    /** How many things stand so. */
    public long count(Class<? extends Standing> standing) {
        return things.values().stream()
                .filter(thing -> standing.isInstance(thing.standing()))
                .count();
    }

    /** The name of the edit. */
    public String editName() {
        long coming = things.values().stream().filter(PlannedThing::comesIn).count();
        return "Import " + coming + (coming == 1 ? " thing" : " things") + " from " + offer.name();
    }

    /**
     * Gives the changes of the edit, reading the file again. What is open stays as the library has it.
     *
     * @return what went wrong with the file since it was planned; if anything, nothing is to be stored
     * @throws org.taperwright.mechanics.work.WorkCancelled when the progress says so
     */
    public List<FileFault> changes(Consumer<Change.Put> taker, Progress progress) {
        Map<ThingId, ThingId> renamed = new HashMap<>();
        things.values().forEach(thing -> thing.fresh().ifPresent(fresh -> renamed.put(thing.id(), fresh)));
        return offer.each(
                        item -> {
                            PlannedThing thing = things.get(item.id());
                            if (thing != null && thing.comesIn()) {
                                ThingId id = thing.fresh().orElse(item.id());
                                taker.accept(new Change.Put(id, Repointed.of(item, renamed)));
                            }
                        },
                        progress)
                .faults();
    }

    /**
     * All changes of the edit together.
     *
     * @throws IllegalStateException if the file is no longer as it was planned
     */
    public List<Change> changes(Progress progress) {
        List<Change> changes = new ArrayList<>();
        List<FileFault> faults = changes(changes::add, progress);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(
                    "the file has changed: " + faults.get(0).sentence());
        }
        return changes;
    }
}
