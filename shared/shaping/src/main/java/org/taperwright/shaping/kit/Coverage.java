package org.taperwright.shaping.kit;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;

/**
 * Whether a kit has what a sequence needs.
 *
 * @param sequence the sequence
 * @param name its name
 * @param steps one for each of its steps that uses an instrument
 */
public record Coverage(ThingId sequence, String name, List<Step> steps) {
    public Coverage {
        steps = List.copyOf(steps);
    }

    /** Whether nothing is missing, perhaps by taking instruments that are alike. */
    public boolean complete() {
        return steps.stream().noneMatch(step -> step.pieces().isEmpty());
    }

    /** The designations that no piece in use has, each once, in the order of the steps. */
    public List<String> missing() {
        return steps.stream()
                .filter(step -> step.pieces().isEmpty())
                .map(Step::wanted)
                .distinct()
                .toList();
    }

    /** How a step finds its instrument in the kit. */
    public enum Match {
        /** A piece of the very entry. */
        SAME("present"),
        /** A piece of another entry with its size, taper and drive that is long enough. */
        ALIKE("alike present"),
        /** None. */
        MISSING("missing"),
        /** The step's entry is not in the catalogue, so nothing can be said but that no piece is of it. */
        UNKNOWN("entry not in the catalogue");

        private final String words;

        Match(String words) {
            this.words = words;
        }

        /** What is said of it. */
        public String words() {
            return words;
        }
    }

    /**
     * A step.
     *
     * @param place from 1
     * @param wanted name, designation and length of what it needs
     * @param match how it finds it
     * @param pieces the pieces in use that it can take
     */
    public record Step(int place, String wanted, Match match, List<String> pieces) {
        public Step {
            pieces = List.copyOf(pieces);
        }
    }
}
