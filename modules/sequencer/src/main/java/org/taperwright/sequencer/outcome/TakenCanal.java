package org.taperwright.sequencer.outcome;

import java.util.List;
import java.util.Optional;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Sequence;

/** Takes a canal that was drawn into the library, alone or with the sequence as it was run in it, so that it can be looked at. */
public final class TakenCanal {
    /**
     * A named edit.
     *
     * @param name the name that undo shows
     * @param changes what it changes
     * @param open the thing to look at then
     */
    public record Edit(String name, List<Change> changes, ThingId open) {}

    private TakenCanal() {}

    /** The canal alone. */
    public static Edit alone(Canal canal) {
        ThingId id = ThingId.fresh();
        return new Edit("Take canal " + canal.name(), List.of(new Change.Put(id, canal)), id);
    }

    /** The canal, and a copy of the sequence in it, each step as far from the end as it was run. */
    public static Edit withSequence(Canal canal, ArrangedSequence arranged) {
        ThingId canalId = ThingId.fresh();
        ThingId sequenceId = ThingId.fresh();
        Sequence moved = PreparedSequence.of(arranged).in(canal).arranged().sequence();
        Sequence copy = new Sequence(
                arranged.sequence().name() + ", in " + canal.name(),
                Optional.of(canalId),
                moved.motor(),
                moved.steps(),
                moved.note());
        return new Edit(
                "Take canal " + canal.name() + " with the sequence",
                List.of(new Change.Put(canalId, canal), new Change.Put(sequenceId, copy)),
                sequenceId);
    }
}
