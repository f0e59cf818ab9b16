package org.taperwright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BenchDesigns;
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

    /** By hand: the middle half of 60 degrees on 5 mm reaches 1.309 mm; d(6.309) = 0.25 + 0.04 * 6.309. */
    @Test
    void theStrainIsThatOfTheThickestLevelInTheMiddleOfTheCurve() {
        FatigueResult result = turned(0.25, 0.04, Tube.USUAL, NITI);
        assertThat(result.levelMm()).isCloseTo(5 + Math.PI / 3 * 5 / 4, within(1e-9));
        assertThat(result.strain()).isCloseTo((0.25 + 0.04 * 6.30900) / 10, within(1e-6));
    }

    /** Pruett, Clement and Carnes, J Endod 1997;23:77 (abstract read): thicker or more sharply curved breaks sooner. */
    @Property(tries = 100)
    void aThickerInstrumentAndASharperCurveBreakNoLater(
            @ForAll @DoubleRange(min = 0.06, max = 1.4) double tip,
            @ForAll @DoubleRange(min = 2, max = 30) double radius) {
        for (Alloy alloy : Alloys.all()) {
            double cycles = turned(tip, 0.04, new Tube(60, radius, 5), alloy).cycles();
            assertThat(turned(tip * 1.1, 0.04, new Tube(60, radius, 5), alloy).cycles())
                    .isLessThanOrEqualTo(cycles);
            assertThat(turned(tip, 0.04, new Tube(60, radius / 1.1, 5), alloy).cycles())
                    .isLessThanOrEqualTo(cycles);
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
        FatigueResult gentle = turned(0.10, 0.02, new Tube(60, 60, 5), NITI);
        assertThat(gentle.unbroken()).isTrue();
        assertThat(gentle.seconds()).isCloseTo(1e7 / 300 * 60, within(1e-3));
    }
}
