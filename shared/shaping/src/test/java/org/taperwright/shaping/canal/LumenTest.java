package org.taperwright.shaping.canal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.taperwright.shaping.Given;

class LumenTest {
    private static final int ANGLES = 72;

    @Test
    void anEllipseReachesAsFarAsItsHalfDiametersAndSupportsAsAnEllipseDoes() {
        Lumen lumen = Lumen.of(Given.canal(new Opening(0, 1.0, 0.6, 30), new Opening(16, 1.0, 0.6, 30)), 0.1, ANGLES);
        assertThat(lumen.stations()).isEqualTo(161);
        assertThat(lumen.radiusMm(3, 6)).isEqualTo(0.5, within(1e-12));
        assertThat(lumen.radiusMm(3, 24)).isEqualTo(0.3, within(1e-12));
        double[] support = new double[ANGLES];
        lumen.support(3, support, 0);
        for (int k = 0; k < ANGLES; k++) {
            // support function of an ellipse: sqrt(a^2 cos^2 + b^2 sin^2); points 5 degrees apart fall short a little
            double turn = lumen.directions().angle(k) - Math.toRadians(30);
            double expected = Math.hypot(0.5 * Math.cos(turn), 0.3 * Math.sin(turn));
            assertThat(support[k]).isBetween(expected * 0.995, expected * (1 + 1e-12));
        }
    }

    @Test
    void aCircleThatMissesTheCentreWidensOnlyWhatItMeets() {
        Lumen lumen = Lumen.of(Given.tube(0.2), 0.1, ANGLES);
        assertThat(lumen.unite(5, 0.4, 0, 0.1)).isTrue();
        assertThat(lumen.radiusMm(5, 0)).isEqualTo(0.5, within(1e-12));
        assertThat(lumen.radiusMm(5, ANGLES / 2)).isEqualTo(0.1, within(1e-12));
        assertThat(lumen.radiusMm(4, 0)).isEqualTo(0.1, within(1e-12));
        assertThat(lumen.unite(5, 0, 0, 0.1)).isFalse();
    }

    /** Pappus: a round tube of radius r holds pi r^2 for each mm of its axis, however it bends. */
    @Test
    void aBentRoundTubeHoldsItsAreaForEachMillimetre() {
        Canal straight = Given.tube(0.8);
        Lumen lumen = Lumen.of(straight, 0.1, ANGLES);
        Centreline bent = Centreline.of(java.util.List.of(new CanalPiece(16, 60, 40)));
        assertThat(lumen.volumePerLengthMm2(80, bent)).isEqualTo(Math.PI * 0.16, within(1e-9));
    }
}
