package org.taperwright.shaping.finish;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Irrigation;

/** Notes, while a sequence is run, how deep the needle of each irrigation reaches in the canal as it then is. */
public final class NeedleWatch implements SequenceShaping.Watch {
    private final ArrangedSequence arranged;
    private final SortedMap<Integer, NeedleReach> reaches = new TreeMap<>();

    /** Watches a sequence. */
    public NeedleWatch(ArrangedSequence arranged) {
        this.arranged = arranged;
    }

    @Override
    public void before(int place, CanalInWork canal, Progress progress) {
        if (arranged.step(place) instanceof Irrigation irrigation) {
            progress.check();
            reaches.put(place, StiffNeedle.of(irrigation.needle(), canal, InscribedCircles.of(canal.now())));
        }
    }

    /** The reach of each irrigation's needle by the step's place from 0; depths are from the orifice. */
    public SortedMap<Integer, NeedleReach> reaches() {
        return Collections.unmodifiableSortedMap(reaches);
    }
}
