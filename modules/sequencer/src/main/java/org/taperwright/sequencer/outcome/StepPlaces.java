package org.taperwright.sequencer.outcome;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.taperwright.mechanics.work.Fault;

/** The places of steps in faults, {@code steps[3].depthMm}. */
public final class StepPlaces {
    private static final Pattern STEP = Pattern.compile("^steps\\[(\\d{1,9})]");

    private StepPlaces() {}

    /** The step a fault is about, from 0. */
    public static Optional<Integer> step(Fault fault) {
        return STEP.matcher(fault.where()).results().findFirst().map(match -> Integer.parseInt(match.group(1)));
    }

    /**
     * A fault whose step was counted among those that could be arranged, counted as in the whole sequence.
     *
     * @param places for each arranged step its place in the sequence
     */
    public static Fault inSequence(Fault fault, List<Integer> places) {
        String where = STEP.matcher(fault.where()).replaceFirst((MatchResult match) -> {
            int arranged = Integer.parseInt(match.group(1));
            int step = arranged < places.size() ? places.get(arranged) : arranged;
            return "steps[" + step + "]";
        });
        return new Fault(fault.weight(), where, fault.what(), fault.expected());
    }
}
