package org.taperwright.shaping.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.passage.stroke.CanalInWork;

/** The reference point lies 6 mm above the orifice; instrumentation ends 16 mm below it. */
class FinishTest {
    private static CanalInWork cone(double bendDeg) {
        return CanalInWork.of(
                new Canal(
                        "cone",
                        List.of(new CanalPiece(8, 0, 0), new CanalPiece(5, bendDeg, 0), new CanalPiece(3, 0, 0)),
                        List.of(new Opening(0, 0.94, 0.94, 0), new Opening(16, 0.30, 0.30, 0)),
                        List.of(),
                        6,
                        22,
                        "",
                        ""),
                0.1,
                72);
    }

    private static NeedleReach reach(CanalInWork canal, NeedleGauge gauge) {
        return StiffNeedle.of(gauge, canal, InscribedCircles.of(canal.now()));
    }

    /** A canal of 30/.04: by plane geometry the cone of its own size and taper fills it all, and no wider one reaches the end. */
    @Test
    void theConeOfTheCanalsOwnShapeFillsIt() {
        Finish finish = Finish.of(cone(0), 16, Progress.NONE);
        ConeFit own = finish.cones().stream()
                .filter(fit -> fit.cone().taper() == 0.04)
                .findFirst()
                .orElseThrow();
        assertThat(own.cone().size()).isEqualTo(30);
        assertThat(own.shareFilled()).isEqualTo(1, within(0.005));
        assertThat(own.endGapMm()).isLessThan(0.011);
        // wider by 0.07 mm it is held 0.07 / 0.04 = 1.75 mm higher
        assertThat(own.wide().depthMm()).isEqualTo(16 - 1.75, within(0.03));
        assertThat(own.thin().gapMm()).isEqualTo(0.035, within(1e-3));
        assertThat(finish.afterMm3()).isEqualTo(finish.beforeMm3(), within(1e-12));
    }

    /** In a straight canal nothing bends, so that steel goes as deep as the width lets it. */
    @Test
    void inAStraightCanalStiffnessDoesNotMatter() {
        NeedleReach wide = reach(cone(0), NeedleGauge.G27);
        assertThat(wide.flexibleMm()).isEqualTo((0.94 - 0.42) / 0.04, within(0.02));
        assertThat(wide.stiffMm()).isEqualTo(wide.flexibleMm(), within(1e-9));
        assertThat(wide.stop()).isEqualTo(NeedleReach.Stop.WIDTH);
        assertThat(reach(cone(0), NeedleGauge.G31).stop()).isEqualTo(NeedleReach.Stop.END);
    }

    /** Where a tube lies along a curve of 5 mm radius its strain is d / 2R, for 0.267 mm 0.027: beyond 0.008 it would stay bent. */
    @Test
    void aSteelNeedleStopsBeforeACurveThatAFlexibleOnePasses() {
        NeedleReach reach = reach(cone(57.3), NeedleGauge.G31);
        assertThat(reach.flexibleMm()).isGreaterThan(15.9);
        assertThat(reach.stiffMm()).isLessThan(reach.flexibleMm() - 1);
        assertThat(reach.stop()).isIn(NeedleReach.Stop.FORCE, NeedleReach.Stop.STRAIN);
    }

    @Test
    void thinnerGaugesGoDeeper() {
        List<NeedleReach> needles = Finish.of(cone(0), 16, Progress.NONE).needles();
        for (int i = 1; i < needles.size(); i++) {
            assertThat(needles.get(i).flexibleMm())
                    .isGreaterThanOrEqualTo(needles.get(i - 1).flexibleMm());
        }
    }
}
