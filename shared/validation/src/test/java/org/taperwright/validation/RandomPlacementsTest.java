package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.placement.Placement;

/**
 * Every placement drawn at random settles within its bounds and leaves nothing that is not a number. The gate draws 200; the
 * profile {@code placements} ten thousand.
 */
class RandomPlacementsTest {
    private static final String SOURCE = "Placements drawn at random";

    @Test
    void everyPlacementDrawnAtRandomSettles() {
        int count = Integer.getInteger("placements", 200);
        RandomPlacements random = new RandomPlacements(20_240_611);
        int[] iterations = new int[count];
        int settled = 0;
        int wedged = 0;
        for (int i = 0; i < count; i++) {
            Placement placement = random.next();
            assertThat(placement.bendingEnergyMj()).isFinite();
            assertThat(placement.totalForceN()).isFinite();
            iterations[i] = placement.iterations();
            settled += placement.settled() ? 1 : 0;
            wedged += placement.leastGapMm() < 0 ? 1 : 0;
        }
        Arrays.sort(iterations);
        Findings.hold(SOURCE, "settled, of " + count, count, settled, 0, "none may fail");
        Findings.remark(
                SOURCE,
                String.format(
                        "%d drawn, %d of them wedged (least gap negative): steps in all passes, median %d, 95 %% below %d, most %d.",
                        count, wedged, iterations[count / 2], iterations[(int) (0.95 * count)], iterations[count - 1]));
    }
}
