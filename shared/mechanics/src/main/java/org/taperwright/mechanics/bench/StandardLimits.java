package org.taperwright.mechanics.bench;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;

/**
 * The limits that the standard sets to bench tests of K-type files of 2 % taper: greatest bending moment at 45 degrees,
 * least torque and least angle at fracture, clamped 3 mm from the tip.
 *
 * <p>Source: ISO 3630-1:1992 and ANSI/ADA 28, recalled from memory with medium confidence, so they are set beside results
 * for orientation and do not decide anything. Sizes below 15 and above 40, reamers and H-type files are not recalled and
 * have no limit here.
 */
public final class StandardLimits {
    private static final String SOURCE = "ISO 3630-1:1992, ANSI/ADA 28, K-type files; from memory, medium confidence";

    /** N mm for one gramme-force times one centimetre. */
    private static final double GRAMME_CM = 0.0980665;

    /** Size to greatest bending moment and least torque, both in g cm. */
    private static final Map<Integer, int[]> BENDING_AND_TORQUE = Map.of(
            15, new int[] {50, 8},
            20, new int[] {80, 18},
            25, new int[] {120, 30},
            30, new int[] {150, 45},
            35, new int[] {190, 65},
            40, new int[] {250, 100});

    private static final double LEAST_ANGLE_DEG = 360;

    /** Sections that K-type blanks have. */
    private static final Set<String> K_TYPE_SECTIONS = Set.of("square", "triangle", "rhombus");

    private StandardLimits() {}

    /** Greatest bending moment at 45 degrees, where the table covers the design. */
    public static Optional<StandardLimit> greatestBendingMoment(Design design) {
        return row(design).map(row -> new StandardLimit(row[0] * GRAMME_CM, true, SOURCE));
    }

    /** Least torque at fracture, where the table covers the design. */
    public static Optional<StandardLimit> leastTorque(Design design) {
        return row(design).map(row -> new StandardLimit(row[1] * GRAMME_CM, false, SOURCE));
    }

    /** Least angle at fracture, degrees, where the table covers the design. */
    public static Optional<Double> leastAngleDeg(Design design) {
        return row(design).map(row -> LEAST_ANGLE_DEG);
    }

    private static Optional<int[]> row(Design design) {
        double size = design.tipDiameterMm() * 100;
        boolean nominal = Math.abs(size - Math.round(size)) < 1e-6;
        boolean standardTaper = design.taper().stream().allMatch(segment -> Math.abs(segment.taper() - 0.02) < 1e-9);
        boolean kType = design.motion() != Motion.REAMING
                && design.sections().stream()
                        .allMatch(station ->
                                K_TYPE_SECTIONS.contains(station.shape().family()));
        if (!nominal || !standardTaper || !kType) {
            return Optional.empty();
        }
        return Optional.ofNullable(BENDING_AND_TORQUE.get((int) Math.round(size)));
    }
}
