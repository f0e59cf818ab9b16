package org.taperwright.sequencer.outcome;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;

/**
 * A sequence as it shaped its canal, with the input it came from.
 *
 * @param arrangement the input
 * @param places for each step that could be arranged, its place in the sequence, from 0
 * @param run what came of it; empty without a canal, or with one that is impossible
 * @param remarks what to beware of, steps counted as in the sequence
 * @param onIndices remarks that quote an estimate or index, to be shown with their bands
 */
public record Shaped(
        Arrangement arrangement, List<Integer> places, Optional<Run> run, List<Fault> remarks, List<Fault> onIndices) {
    public Shaped {
        places = List.copyOf(places);
        remarks = List.copyOf(remarks);
        onIndices = List.copyOf(onIndices);
    }

    /** The remarks that may be shown, with or without the bands. */
    public List<Fault> remarks(boolean banded) {
        return banded ? Stream.concat(remarks.stream(), onIndices.stream()).toList() : remarks;
    }

    /**
     * What came of a sequence.
     *
     * @param prepared the steps made ready, counted as they could be arranged
     * @param sequence what each step did, and what became of the canal
     * @param numbers all its numbers by step
     * @param needles how deep the needle of each irrigation reaches, by its place among the arranged steps
     * @param finish what the canal then lets in
     */
    public record Run(
            PreparedSequence prepared,
            ShapedSequence sequence,
            StepNumbers numbers,
            SortedMap<Integer, NeedleReach> needles,
            Finish finish) {}

    /** How deep the needle of the irrigation at a place of the sequence reaches; empty where there is none. */
    public Optional<NeedleReach> needle(int place) {
        int arranged = places.indexOf(place);
        return run.flatMap(ran -> Optional.ofNullable(ran.needles().get(arranged)));
    }

    /** What the step at a place of the sequence did; empty where it was not made. */
    public Optional<StepOutcome> step(int place) {
        int arranged = places.indexOf(place);
        return run.flatMap(ran -> Optional.ofNullable(ran.sequence().byPlace().get(arranged)));
    }

    /** What the last step before a place did that was made. */
    public Optional<StepOutcome> stepBefore(int place) {
        Optional<StepOutcome> found = Optional.empty();
        for (int before = 0; before < place; before++) {
            found = step(before).or(latest(found));
        }
        return found;
    }

    private static java.util.function.Supplier<Optional<StepOutcome>> latest(Optional<StepOutcome> found) {
        return () -> found;
    }

    /** Those about the step at a place. */
    public List<Fault> remarksOn(int place, boolean banded) {
        return remarks(banded).stream()
                .filter(fault -> StepPlaces.step(fault).equals(Optional.of(place)))
                .toList();
    }
}
