package org.taperwright.shaping.passage.stroke;

import java.util.ArrayList;
import java.util.List;

/**
 * How an instrument is brought down.
 *
 * @param advanceMm how much deeper a stroke may go than the one before it, or than where the instrument first binds, mm
 * @param secondsAtDepth how long it works at the depth of each stroke, s
 */
public record StrokePlan(double advanceMm, double secondsAtDepth) {
    /** A millimetre at a time and a second at depth (common practice, no source). */
    public static final StrokePlan USUAL = new StrokePlan(1, 1);

    /**
     * Depths of a number of strokes: from where the instrument binds it advances by equal parts of at most the advance, and what
     * strokes are left are made at full depth. Where the strokes are too few for that, each goes deeper.
     */
    public List<Double> depthsMm(double bindMm, double targetMm, int strokes) {
        List<Double> depths = new ArrayList<>();
        double way = Math.max(0, targetMm - bindMm);
        int down = Math.max(1, Math.min(strokes, (int) Math.ceil(way / advanceMm - 1e-9)));
        for (int i = 1; i <= Math.max(1, strokes); i++) {
            depths.add(i >= down ? targetMm : targetMm - way * (down - i) / down);
        }
        return depths;
    }

    /** What a stroke advances for each turn, mm; only it counts in the torque, not the speed. */
    public double feedPerTurnMm(double bindMm, double targetMm, int strokes, Movement movement) {
        List<Double> depths = depthsMm(bindMm, targetMm, strokes);
        double first = Math.max(0, depths.get(0) - bindMm);
        return movement.cuttingTurns() > 0 ? first / movement.cuttingTurns() : 0;
    }
}
