package org.taperwright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;

class FatigueTest {
    private static final Alloy NITI = Alloys.find("niti-superelastic").orElseThrow();

    private static FatigueResult turned(double tipMm, double taper, Tube tube, Alloy alloy) {
        return Fatigue.in(
                tube,
                BenchDesigns.of("triangle", tipMm, List.of(new TaperSegment(0, 16, taper)), Motion.ROTATION),
                alloy,
                Fatigue.USUAL_RPM);
    }

    private static Design straightFluted(double tipMm, double taper) {
        return Designs.with(
                        BenchDesigns.of("triangle", tipMm, List.of(new TaperSegment(0, 16, taper)), Motion.ROTATION))
                .flutesPerMm(0)
                .design();
    }

    /** By hand: in a tight tube the arc of 60 degrees on 5 mm reaches 2.618 mm; d(7.618) = 0.25 + 0.04 * 7.618. */
    @Test
    void withoutPlayOrTwistTheStrainIsThatOfTheThickestLevelInTheCurve() {
        FatigueResult result = Fatigue.in(Tube.tight(60, 5, 5), straightFluted(0.25, 0.04), NITI, Fatigue.USUAL_RPM);
        assertThat(result.levelMm()).isCloseTo(5 + Math.PI / 3 * 5 / 2, within(1e-9));
        assertThat(result.strain()).isCloseTo((0.25 + 0.04 * 7.61799) / 10, within(1e-6));
    }

    /**
     * By hand: the axis whose curvature is the tube's averaged over L = sqrt(24 * 5 * 0.1) = 3.4641 mm, integrated twice, lies
     * 0.1 mm inside the tube's in the middle of the arc.
     */
    @Test
    void theEasedAxisUsesItsPlayAndTurnsAsFarAsTheTube() {
        Tube tube = new Tube(60, 5, 50, 0.1);
        assertThat(tube.easingMm()).isCloseTo(3.46410, within(1e-5));
        double step = 1e-3;
        double slope = 0;
        double apart = 0;
        double arcSlope = 0;
        double turned = 0;
        for (double x = 40; x < 60; x += step) {
            slope += tube.curvature(x + step / 2) * step;
            arcSlope += Tube.tight(60, 5, 50).curvature(x + step / 2) * step;
            apart += x < 50 ? (slope - arcSlope) * step : 0;
            turned = slope;
        }
        assertThat(Math.toDegrees(turned)).isCloseTo(60, within(0.05));
        assertThat(apart).isCloseTo(0.1, within(1e-3));
    }

    @Test
    void aLooseTubeNeverBendsAShortArcToItsRadius() {
        Tube loose = new Tube(30, 5, 5, 0.5);
        assertThat(loose.curvature(5)).isCloseTo(Math.PI / 6 * 5 / Math.sqrt(24 * 5 * 0.5) / 5, within(1e-9));
    }

    /** reference/helical.json, triangle at t = 1: stiffness 0.8552, peak von Mises stress 0.8141 of the straight bar's. */
    @Test
    void turningFlutesLessenTheStrainByStiffnessTimesPeakStress() {
        double d = 0.4;
        Design turning = Designs.with(straightFluted(d, 0))
                .flutesPerMm(3 / (2 * Math.PI * d))
                .design();
        double straight =
                Fatigue.in(Tube.USUAL, straightFluted(d, 0), NITI, 300).strain();
        double turned = Fatigue.in(Tube.USUAL, turning, NITI, 300).strain();
        assertThat(straight).isCloseTo(0.04, within(1e-9));
        assertThat(turned / straight).isCloseTo(0.855 * 0.8141, within(0.02));
    }

    /** By hand: half of one life and a quarter of another make three quarters (Miner 1945). */
    @Test
    void sharesOfLivesAddUp() {
        double atTwo = StrainLives.of(NITI).cycles(0.02);
        double atFour = StrainLives.of(NITI).cycles(0.04);
        var spent = Damage.spent(
                List.of(
                        new Exposure(0.02, atTwo / 2, Motion.ROTATION),
                        new Exposure(0.04, atFour / 4, Motion.ROTATION)),
                NITI);
        assertThat(spent.value()).isCloseTo(0.75, within(1e-12));
        assertThat(spent.band().orElseThrow().low()).isLessThan(0.75).isPositive();
        assertThat(spent.band().orElseThrow().high()).isGreaterThan(0.75);
    }

    @Test
    void whatIsSpentGrowsWithTheLevelsStrainAndNothingIsSpentByNothing() {
        assertThat(Damage.spent(List.of(), NITI).value()).isZero();
        List<FatigueLevel> levels = Fatigue.along(
                Tube.USUAL,
                straightFluted(0.25, 0.04),
                NITI,
                org.taperwright.mechanics.properties.BladeSections.of(straightFluted(0.25, 0.04)));
        for (FatigueLevel level : levels) {
            for (FatigueLevel other : levels) {
                assertThat(level.strain() > other.strain() && level.cycles() > other.cycles())
                        .isFalse();
            }
        }
    }

    /** Pruett, Clement and Carnes, J Endod 1997;23:77 (abstract read): thicker or more sharply curved breaks sooner. The arc is as long. */
    @Property(tries = 100)
    void aThickerInstrumentAndASharperCurveBreakNoLater(
            @ForAll @DoubleRange(min = 0.06, max = 1.4) double tip,
            @ForAll @DoubleRange(min = 2, max = 30) double radius) {
        for (Alloy alloy : Alloys.all()) {
            double cycles = turned(tip, 0.04, Tube.tight(60, radius, 5), alloy).cycles();
            assertThat(turned(tip * 1.1, 0.04, Tube.tight(60, radius, 5), alloy).cycles())
                    .isLessThanOrEqualTo(cycles);
            assertThat(turned(tip, 0.04, Tube.tight(66, radius / 1.1, 5), alloy).cycles())
                    .isLessThanOrEqualTo(cycles);
        }
    }

    /** The same study: cycles fall with the angle at one radius, and with the radius at one angle. */
    @Property(tries = 100)
    void moreAngleAndLessRadiusEachBreakNoLater(
            @ForAll @DoubleRange(min = 0.06, max = 1.4) double tip,
            @ForAll @DoubleRange(min = 2, max = 15) double radius,
            @ForAll @DoubleRange(min = 15, max = 75) double angle) {
        for (Alloy alloy : Alloys.all()) {
            double cycles =
                    turned(tip, 0.04, Tube.tight(angle, radius, 5), alloy).cycles();
            assertThat(turned(tip, 0.04, Tube.tight(angle * 1.2, radius, 5), alloy)
                            .cycles())
                    .isLessThanOrEqualTo(cycles);
            assertThat(turned(tip, 0.04, Tube.tight(angle, radius / 1.2, 5), alloy)
                            .cycles())
                    .isLessThanOrEqualTo(cycles);
        }
    }

    /** Walia, Brantley and Gerstein, J Endod 1988, and bench studies since (from memory, medium confidence). */
    @ParameterizedTest
    @ValueSource(strings = {"stainless-steel", "carbon-steel"})
    void steelBreaksSoonerThanNickelTitaniumAtTheSameStrain(String steel) {
        for (double strain : new double[] {0.01, 0.02, 0.03, 0.04}) {
            assertThat(StrainLives.of(Alloys.find(steel).orElseThrow()).cycles(strain))
                    .isLessThan(StrainLives.of(NITI).cycles(strain));
        }
    }

    @Property(tries = 100)
    void theEstimateLiesInItsBandAndBothArePositive(
            @ForAll @DoubleRange(min = 0.06, max = 1.4) double tip,
            @ForAll @DoubleRange(min = 0, max = 0.12) double taper) {
        for (Alloy alloy : Alloys.all()) {
            FatigueResult result = turned(tip, taper, Tube.USUAL, alloy);
            assertThat(result.band().low()).isPositive();
            assertThat(result.cycles())
                    .isBetween(result.band().low(), result.band().high());
        }
    }

    @Test
    void strainOutsideTheSourcesRangeIsMarked() {
        assertThat(turned(0.25, 0.04, Tube.USUAL, NITI).extrapolated()).isFalse();
        assertThat(turned(1.4, 0.04, Tube.USUAL, NITI).extrapolated()).isTrue();
    }

    @Test
    void belowTheEnduranceStrainNothingBreaksAndTimeIsTurnsOverSpeed() {
        FatigueResult gentle = turned(0.10, 0.02, Tube.tight(60, 60, 5), NITI);
        assertThat(gentle.unbroken()).isTrue();
        assertThat(gentle.seconds()).isCloseTo(1e7 / 300 * 60, within(1e-3));
    }
}
