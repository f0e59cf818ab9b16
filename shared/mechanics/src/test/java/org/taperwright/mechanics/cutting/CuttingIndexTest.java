package org.taperwright.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;

/** Directions that the trade holds: common practice, no source. */
class CuttingIndexTest {
    private static double index(
            Motion motion, double helixDeg, double rakeDeg, double wedgeDeg, double land, double room) {
        return CuttingGeometries.index(
                motion, Math.toRadians(helixDeg), Math.toRadians(rakeDeg), Math.toRadians(wedgeDeg), land, room);
    }

    @Property
    void aMorePositiveRakeCutsMore(
            @ForAll @DoubleRange(min = -70, max = 25) double rake,
            @ForAll @DoubleRange(min = 0.1, max = 10) double more) {
        assertThat(index(Motion.ROTATION, 30, rake + more, 60, 0.02, 0.4))
                .isGreaterThan(index(Motion.ROTATION, 30, rake, 60, 0.02, 0.4));
    }

    @Property
    void aSharperWedgeCutsMore(
            @ForAll @DoubleRange(min = 20, max = 150) double wedge,
            @ForAll @DoubleRange(min = 0.1, max = 20) double more) {
        assertThat(index(Motion.ROTATION, 30, -20, wedge, 0.02, 0.4))
                .isGreaterThan(index(Motion.ROTATION, 30, -20, wedge + more, 0.02, 0.4));
    }

    @Property
    void aWiderLandCutsLess(
            @ForAll @DoubleRange(min = 0, max = 0.3) double land,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double more) {
        assertThat(index(Motion.ROTATION, 30, -20, 60, land, 0.4))
                .isGreaterThan(index(Motion.ROTATION, 30, -20, 60, land + more, 0.4));
    }

    @Property
    void moreRoomForChipsCutsMore(
            @ForAll @DoubleRange(min = 0.05, max = 0.7) double room,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double more) {
        assertThat(index(Motion.ROTATION, 30, -20, 60, 0.02, room + more))
                .isGreaterThan(index(Motion.ROTATION, 30, -20, 60, 0.02, room));
    }

    @Test
    void aSteeperHelixSuitsFilingAndASlowerOneSuitsReaming() {
        assertThat(index(Motion.FILING, 45, -45, 90, 0, 0.36))
                .isGreaterThan(index(Motion.FILING, 20, -45, 90, 0, 0.36));
        assertThat(index(Motion.REAMING, 20, -45, 90, 0, 0.36))
                .isGreaterThan(index(Motion.REAMING, 45, -45, 90, 0, 0.36));
    }

    @Test
    void anEdgeThatOnlyRubsHasTheIndexZero() {
        assertThat(index(Motion.ROTATION, 0, -80, 120, 0, 0.4)).isZero();
    }
}
