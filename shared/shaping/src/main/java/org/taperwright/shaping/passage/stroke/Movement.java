package org.taperwright.shaping.passage.stroke;

import org.taperwright.mechanics.design.Motion;
import org.taperwright.shaping.sequence.SetAngles;

/**
 * How far an instrument turns or slides during one stroke at depth.
 *
 * @param cuttingTurns turns made in the cutting sense
 * @param bendingTurns turns of the blade about its bent axis, each a cycle of bending
 * @param slideMm way along the axis while the edges cut
 */
public record Movement(double cuttingTurns, double bendingTurns, double slideMm) {
    private static final double HAND_REAMING_RPM = 60;
    /** Filing by hand: two strokes of 2 mm a second, of which one way cuts (common practice, no source). */
    private static final double FILING_MM_PER_S = 4;

    /** Turned at a speed for a time. */
    public static Movement turned(double rpm, double seconds) {
        double turns = rpm / 60 * seconds;
        return new Movement(turns, turns, 0);
    }

    /**
     * A motion for a time.
     *
     * @param rpm speed set on a motor; by hand it is not asked
     * @param angles turns to and fro; asked only of reciprocation
     */
    public static Movement of(Motion motion, double rpm, double seconds, SetAngles angles) {
        return switch (motion) {
            case ROTATION -> turned(rpm, seconds);
            case REAMING -> turned(HAND_REAMING_RPM, seconds);
            case RECIPROCATION -> {
                double travelled = rpm / 60 * seconds;
                double cutting = angles.cuttingDeg();
                double releasing = angles.releasingDeg();
                double there = cutting + releasing;
                double onwards = Math.abs(cutting - releasing);
                yield there > 0
                        ? new Movement(travelled * cutting / there, travelled * onwards / there, 0)
                        : new Movement(0, 0, 0);
            }
            case FILING -> new Movement(0, 0, FILING_MM_PER_S * seconds);
        };
    }
}
