package org.taperwright.shaping.passage.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.shaping.passage.Third;

/**
 * What became of a canal.
 *
 * @param beforeMm3 volume before, by third (computed)
 * @param afterMm3 volume after, by third (computed, from the wear assumed)
 * @param touchedShare share of the wall's area worn by more than 0.02 mm (estimate)
 * @param transportation by distance from where instrumentation ends (sign and order hold, the size is an index)
 * @param leastDentine where least is left, if the root's outline is known (estimate)
 */
public record CanalOutcome(
        Map<Third, Double> beforeMm3,
        Map<Third, Double> afterMm3,
        double touchedShare,
        List<Transportation> transportation,
        Optional<LeastDentine> leastDentine) {
    /** How deep counts as touched, mm. */
    public static final double TOUCHED_MM = 0.02;

    /** Distances from the end at which transportation is measured, mm. */
    public static final List<Double> FROM_END_MM = List.of(1.0, 2.0, 3.0, 5.0, 7.0);

    public CanalOutcome {
        beforeMm3 = Third.ordered(beforeMm3);
        afterMm3 = Third.ordered(afterMm3);
        transportation = List.copyOf(transportation);
    }

    /** What has become of a canal in work so far. */
    public static CanalOutcome of(CanalInWork canal) {
        WallChange change = WallChange.of(canal);
        double end = canal.geometry().endDepthMm();
        List<Transportation> moved = new ArrayList<>();
        for (double from : FROM_END_MM) {
            if (from < end) {
                moved.add(change.at(end, from));
            }
        }
        Optional<LeastDentine> dentine = canal.canal().root().isEmpty()
                ? Optional.empty()
                : Optional.of(RootWall.of(canal.canal()).least(canal.now()));
        return new CanalOutcome(
                canal.volumeBeforeByThirdMm3(),
                canal.volumeByThirdMm3(),
                change.touchedShare(TOUCHED_MM),
                moved,
                dentine);
    }
}
