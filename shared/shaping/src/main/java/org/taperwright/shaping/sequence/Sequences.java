package org.taperwright.shaping.sequence;

import java.util.ArrayList;
import java.util.List;

/**
 * Edits of a sequence as pure functions: each returns a new sequence and leaves the old one as it was. Places count from
 * 0; one outside the sequence is a mistake of the caller and throws {@link IndexOutOfBoundsException}.
 */
public final class Sequences {
    private Sequences() {}

    /** The step at a place moved to another place; the steps between close up. */
    public static Sequence moved(Sequence sequence, int from, int to) {
        List<Step> steps = new ArrayList<>(sequence.steps());
        Step step = steps.remove(from);
        steps.add(to, step);
        return withSteps(sequence, steps);
    }

    /** A step put in before the one at a place, or at the end when the place is the number of steps. */
    public static Sequence inserted(Sequence sequence, int place, Step step) {
        List<Step> steps = new ArrayList<>(sequence.steps());
        steps.add(place, step);
        return withSteps(sequence, steps);
    }

    /** The step at a place taken out. */
    public static Sequence removed(Sequence sequence, int place) {
        List<Step> steps = new ArrayList<>(sequence.steps());
        steps.remove(place);
        return withSteps(sequence, steps);
    }

    /** Another step at a place. */
    public static Sequence withStep(Sequence sequence, int place, Step step) {
        List<Step> steps = new ArrayList<>(sequence.steps());
        steps.set(place, step);
        return withSteps(sequence, steps);
    }

    /** The step at a place taken to another depth, mm from the coronal reference point, where its depth is its own. */
    public static Sequence withDepth(Sequence sequence, int place, double depthMm) {
        return withStep(sequence, place, sequence.steps().get(place).at(depthMm));
    }

    /** Every step so much deeper, mm, where its depth is its own. */
    public static Sequence deeper(Sequence sequence, double mm) {
        return withSteps(
                sequence, sequence.steps().stream().map(step -> step.deeper(mm)).toList());
    }

    private static Sequence withSteps(Sequence sequence, List<Step> steps) {
        return new Sequence(sequence.name(), sequence.canal(), sequence.motor(), steps, sequence.note());
    }
}
