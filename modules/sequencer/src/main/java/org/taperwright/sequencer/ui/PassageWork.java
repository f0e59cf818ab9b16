package org.taperwright.sequencer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.taperwright.library.store.Arrangement;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.passage.GeometricPassage;
import org.taperwright.shaping.passage.GeometricPassages;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.workbench.api.Work;

/**
 * Computes what each step of an arrangement does by geometry and what the rules remark.
 *
 * @param arrangement the input, kept with the result
 */
record PassageWork(Arrangement arrangement) implements Work<PassageWork.Passed> {
    private static final Pattern STEP = Pattern.compile("^steps\\[(\\d+)]");

    /**
     * The result, with the input it came from.
     *
     * @param arrangement the input
     * @param steps one for each step of the sequence, absent where it could not be computed
     * @param remarks what deserves a look, steps counted as in the sequence
     */
    record Passed(Arrangement arrangement, List<Optional<StepGeometry>> steps, List<Fault> remarks) {
        Passed {
            steps = List.copyOf(steps);
            remarks = List.copyOf(remarks);
        }
    }

    @Override
    public Passed run(Progress progress) {
        List<Optional<StepGeometry>> steps = new ArrayList<>();
        arrangement.instruments().forEach(instrument -> steps.add(Optional.empty()));
        List<Fault> remarks = new ArrayList<>();
        List<Integer> complete = arrangement.complete();
        for (int i = 0; i < steps.size(); i++) {
            if (!complete.contains(i)) {
                remarks.add(Fault.impossible(
                        "steps[" + i + "].instrument",
                        "its instrument is no longer in the library",
                        "an instrument of the library; remove the step or undo the removal"));
            }
        }
        Optional<ArrangedSequence> arranged = arrangement.arranged();
        if (arranged.isPresent()) {
            progress.check();
            GeometricPassage passage = GeometricPassages.of(arranged.get());
            for (int i = 0; i < passage.steps().size(); i++) {
                steps.set(complete.get(i), passage.steps().get(i));
            }
            passage.remarks().forEach(fault -> remarks.add(counted(fault, complete)));
        }
        return new Passed(arrangement, steps, remarks);
    }

    /** A remark with its step counted as in the whole sequence, missing instruments included. */
    private static Fault counted(Fault fault, List<Integer> complete) {
        String where = STEP.matcher(fault.where()).replaceFirst((MatchResult match) -> {
            int arranged = Integer.parseInt(match.group(1));
            int step = arranged < complete.size() ? complete.get(arranged) : arranged;
            return "steps[" + step + "]";
        });
        return new Fault(fault.weight(), where, fault.what(), fault.expected());
    }

    /** The step a remark is about, from 0. */
    static Optional<Integer> step(Fault fault) {
        return STEP.matcher(fault.where()).results().findFirst().map(match -> Integer.parseInt(match.group(1)));
    }

    /** A place in the words of the JSON form, in the words of the window. */
    static String place(String where) {
        String counted = STEP.matcher(where).replaceFirst(match -> "Step " + (Integer.parseInt(match.group(1)) + 1));
        return counted.replace(".depthMm", ", depth")
                .replace(".speedRpm", ", speed")
                .replace(".torqueNmm", ", torque limit")
                .replace(".instrument", ", instrument")
                .replace(".motion", ", motion")
                .replace(".strokes", ", strokes")
                .replaceFirst("^canal", "Canal")
                .replaceFirst("^motor", "Motor")
                .replaceFirst("^steps$", "Steps");
    }
}
