package org.taperwright.library.history;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/**
 * Several catalogue entries made one: the one kept takes the stock of all, whatever referred to the others refers to it,
 * and the others go.
 */
public final class Merging {
    private Merging() {}

    /**
     * The changes.
     *
     * @param kept the entry that stays
     * @param entries all of them, the kept one perhaps among them
     */
    public static List<Change> changes(Snapshot library, ThingId kept, List<ThingId> entries) {
        Set<ThingId> gone = new HashSet<>(entries);
        gone.remove(kept);
        List<Change> changes = new ArrayList<>();
        Optional<Instrument> stays = library.thing(kept, Instrument.class);
        if (stays.isEmpty() || gone.isEmpty()) {
            return changes;
        }
        long stock = stays.get().supply().stock();
        for (ThingId id : gone) {
            stock += library.thing(id, Instrument.class)
                    .map(each -> each.supply().stock())
                    .orElse(0);
            changes.add(new Change.Remove(id));
        }
        Supply together = stays.get().supply().withStock((int) Math.min(Supply.MOST, stock));
        changes.add(new Change.Put(kept, stays.get().draft().supply(together).instrument()));
        for (Entry entry : library.ofKind(ThingKind.SEQUENCE)) {
            retarget((Sequence) entry.thing(), kept, gone)
                    .ifPresent(sequence -> changes.add(new Change.Put(entry.id(), sequence)));
        }
        for (Entry entry : library.ofKind(ThingKind.KIT)) {
            retarget((Kit) entry.thing(), kept, gone).ifPresent(kit -> changes.add(new Change.Put(entry.id(), kit)));
        }
        return changes;
    }

    private static Optional<Sequence> retarget(Sequence sequence, ThingId kept, Set<ThingId> gone) {
        List<Step> steps = sequence.steps().stream()
                .map(step -> step.using(used -> gone.contains(used) ? kept : used))
                .toList();
        return steps.equals(sequence.steps())
                ? Optional.empty()
                : Optional.of(
                        new Sequence(sequence.name(), sequence.canal(), sequence.motor(), steps, sequence.note()));
    }

    private static Optional<Kit> retarget(Kit kit, ThingId kept, Set<ThingId> gone) {
        List<Piece> pieces = kit.pieces().stream()
                .map(piece -> gone.contains(piece.instrument())
                        ? piece.draft().instrument(kept).piece()
                        : piece)
                .toList();
        return pieces.equals(kit.pieces())
                ? Optional.empty()
                : Optional.of(new Kit(kit.name(), kit.purpose(), kit.motor(), pieces, kit.note()));
    }
}
