package org.taperwright.mechanics.comparison.score;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A set of weights to begin with, named by what an instrument is wanted for. Which qualities a purpose asks for is common
 * practice, no source; the numbers are a beginning to move away from, never a recommendation.
 *
 * @param id identifier on the command line
 * @param label name for people
 * @param reason one sentence on what it weighs and why
 * @param weights the weights
 */
public record Purpose(String id, String label, String reason, Weights weights) {
    private static final List<Purpose> ALL = List.of(
            new Purpose(
                    "narrow-curve",
                    "Narrow, curved canal",
                    "Following the curve and lasting in it come first, then torque left when the tip binds; cutting last.",
                    new Weights(Map.of(
                            "flexibility", 3.0,
                            "cycles-to-fracture", 3.0,
                            "fracture-torque", 2.0,
                            "self-centring", 1.0,
                            "cutting", 1.0))),
            new Purpose(
                    "coronal-flaring",
                    "Flaring the coronal third",
                    "A straight, wide stretch: much dentine is to be cut and carried away, and flexibility hardly counts.",
                    new Weights(Map.of("cutting", 3.0, "chip-space", 2.0, "fracture-torque", 2.0, "flexibility", 1.0))),
            new Purpose(
                    "retreatment",
                    "Taking out an old filling",
                    "The filling loads the blade in torsion, and what is loosened must find room in the flutes.",
                    new Weights(Map.of(
                            "fracture-torque", 3.0,
                            "fracture-angle", 1.0,
                            "chip-space", 2.0,
                            "cutting", 2.0,
                            "flexibility", 1.0))),
            new Purpose(
                    "teaching",
                    "For teaching: one metric of each group, alike",
                    "Bending, cutting, torsion, fatigue and guidance count the same, so that every gain shows its price.",
                    new Weights(Map.of(
                            "flexibility", 1.0,
                            "cutting", 1.0,
                            "fracture-torque", 1.0,
                            "cycles-to-fracture", 1.0,
                            "self-centring", 1.0))));

    /** All purposes. */
    public static List<Purpose> all() {
        return ALL;
    }

    /** The purpose of an identifier. */
    public static Optional<Purpose> find(String id) {
        return ALL.stream().filter(purpose -> purpose.id().equals(id)).findFirst();
    }
}
