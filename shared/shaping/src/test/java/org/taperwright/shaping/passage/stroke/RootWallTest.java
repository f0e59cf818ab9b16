package org.taperwright.shaping.passage.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.RootOutline;

class RootWallTest {
    /** Plane geometry: circles of radius 1.2 and 0.2, centres 0.3 apart, leave 0.7 on the nearer side. */
    @Test
    void leastDentineOfTwoCirclesIsOnTheNearerSide() {
        RootWall root =
                RootWall.about(List.of(new RootOutline(0, 2.4, 2.4, 0), new RootOutline(16, 2.4, 2.4, 0)), -0.3, 0);
        LeastDentine least = root.least(Lumen.of(Given.tube(0.4), 0.5, 72), 10);
        assertThat(least.thicknessMm()).isEqualTo(0.7, within(1e-3));
        assertThat(least.azimuthDeg()).isEqualTo(0, within(5.1));
        assertThat(least.depthMm()).isEqualTo(5, within(1e-9));
    }

    @Test
    void leastDentineIsFoundWhereTheRootIsNarrowest() {
        RootWall root = RootWall.about(
                List.of(new RootOutline(0, 3, 3, 0), new RootOutline(8, 1.4, 1.4, 0), new RootOutline(16, 3, 3, 0)),
                0,
                0);
        LeastDentine least = root.least(Lumen.of(Given.tube(0.4), 0.5, 72));
        assertThat(least.depthMm()).isEqualTo(8, within(1e-9));
        assertThat(least.thicknessMm()).isEqualTo(0.5, within(1e-3));
    }
}
