package org.taperwright.mechanics.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.LifeConstant;
import org.taperwright.mechanics.fatigue.StrainLife;
import org.taperwright.mechanics.fatigue.StrainLives;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Progress;

/** Synthetic lives of known constants, with lognormal scatter between like pieces laid on them. */
class LifeFitsTest {
    private static final Alloy BEFORE = Alloys.find("niti-superelastic").orElseThrow();
    private static final Design DESIGN = Designs.with(BenchDesigns.of("square", 0.25, 0.06))
            .alloy(BEFORE.id())
            .design();

    private static final String POWER = LifeConstant.POINT.id();
    private static final String EXPONENT = LifeConstant.EXPONENT.id();
    private static final double TRUE_POWER =
            LifeConstant.POINT.of(StrainLives.of(BEFORE)).value() + 0.12;
    private static final double TRUE_EXPONENT = 0.45;
    private static final Alloy TRUE = with(with(BEFORE, POWER, TRUE_POWER), EXPONENT, TRUE_EXPONENT);

    @Test
    void livesWithoutScatterGiveTheirConstantsBack() {
        AlloyFit fit = fitted(List.of(POWER, EXPONENT), List.of(lives(TRUE, 0, 1)));
        assertThat(fit.constants().get(0).value()).isCloseTo(TRUE_POWER, within(1e-4));
        assertThat(fit.constants().get(1).value()).isCloseTo(TRUE_EXPONENT, within(1e-4));
        assertThat(fit.residuals())
                .singleElement()
                .satisfies(each -> assertThat(each.ofLogarithms()).isLessThan(1e-5));
        assertThat(fit.curveScatter()).isEmpty();
    }

    /**
     * Of many fits to different scatter the known constant lies within each one's 90 % interval by Student's t about 9 times in
     * 10. The bounds hold 99.9 % of binomial draws. The scatter is that published between like instruments, 30 %.
     */
    @Test
    void theStatedErrorsCoverTheKnownConstants() {
        int fits = 200;
        double scatter = 0.3;
        int points = RADII.length * PIECES;
        double reach = new TDistribution(points - 2).inverseCumulativeProbability(0.95);
        int powerInside = 0;
        int exponentInside = 0;
        double squares = 0;
        for (int seed = 0; seed < fits; seed++) {
            AlloyFit fit = fitted(List.of(POWER, EXPONENT), List.of(lives(TRUE, scatter, seed)));
            powerInside += inside(fit.constants().get(0), TRUE_POWER, reach);
            exponentInside += inside(fit.constants().get(1), TRUE_EXPONENT, reach);
            squares += Math.pow(fit.lifeScatter().orElseThrow(), 2);
        }
        BinomialDistribution expected = new BinomialDistribution(null, fits, 0.9);
        int least = expected.inverseCumulativeProbability(0.0005);
        int most = expected.inverseCumulativeProbability(0.9995);
        assertThat(powerInside).as("life").isBetween(least, most);
        assertThat(exponentInside).as("exponent").isBetween(least, most);
        assertThat(Math.sqrt(squares / fits)).isCloseTo(scatter, within(0.03 * scatter));
    }

    @Test
    void theFittedAlloyLivesByItsOwnLawAndTheOthersByTheirs() {
        AlloyFit fit = fitted(List.of(POWER), List.of(lives(TRUE, 0.1, 5)));
        double strain = StrainLife.POINT;
        double fitted = Fatigue.life(strain, DESIGN.motion(), fit.alloy());
        assertThat(Math.log10(fitted)).isCloseTo(fit.constants().get(0).value(), within(1e-9));
        assertThat(StrainLives.of(fit.alloy()).source()).startsWith("Life at 3 % strain, as a power of ten: ");
        assertThat(StrainLives.of(BEFORE))
                .isEqualTo(StrainLives.of(Alloys.find(BEFORE.id()).orElseThrow()));
        Band band = Fatigue.cycles(strain, DESIGN.motion(), fit.alloy()).band().orElseThrow();
        Band wide = Fatigue.cycles(strain, DESIGN.motion(), BEFORE).band().orElseThrow();
        assertThat(band.high() / band.low()).isLessThan(wide.high() / wide.low());
    }

    @Test
    void aFittedAlloyOfAnotherKindKeepsTheLifeOfItsKind() {
        Alloy treated = Alloys.find("niti-martensitic").orElseThrow();
        Alloy stiffer = with(treated, "youngMpa", treated.youngMpa() * 1.05);
        Alloy own = kept(stiffer);
        assertThat(own.id()).isNotEqualTo(treated.id());
        assertThat(StrainLives.of(own)).isEqualTo(StrainLives.of(treated));
    }

    @Test
    void curvesAndLivesAreFittedApartWithNothingBetweenThem() {
        List<CurvePoint> points = new ArrayList<>();
        double[] angles = {10, 20, 30, 40, 45};
        double[] moments = ComputedCurve.of(BenchCurve.BENDING, DESIGN, BEFORE, BladeSections.of(DESIGN))
                .at(angles);
        for (int i = 0; i < angles.length; i++) {
            points.add(new CurvePoint(angles[i], moments[i] * (i % 2 == 0 ? 1.01 : 0.99)));
        }
        MeasuredCurve curve = new MeasuredCurve(BenchCurve.BENDING, "bench", points);
        AlloyFit fit = fitted(List.of(POWER, "youngMpa"), List.of(lives(TRUE, 0.2, 3), curve));
        assertThat(fit.constants()).extracting(each -> each.before().name()).containsExactly("youngMpa", POWER);
        assertThat(fit.covariance().get(0).get(1)).isZero();
        assertThat(fit.covariance().get(1).get(0)).isZero();
        assertThat(fit.correlation(0, 0)).isCloseTo(1, within(1e-12));
        assertThat(fit.curveScatter()).isPresent();
        assertThat(fit.lifeScatter()).isPresent();
        assertThat(fit.residuals()).extracting(each -> each.measured().label()).containsExactly("bench", "tubes");
    }

    @Test
    void livesThatCameToTheEndOfATestOrLieNearTheEnduranceAreLeftOut() {
        List<MeasuredLives.Life> some = new ArrayList<>(lives(TRUE, 0, 1).lives());
        some.add(new MeasuredLives.Life(new Tube(60, 5, 5, 0.1), StrainLife.RUN_OUT));
        some.add(new MeasuredLives.Life(new Tube(60, 500, 5, 0.1), 1e6));
        AlloyFit fit = fitted(List.of(POWER, EXPONENT), List.of(new MeasuredLives("tubes", some)));
        assertThat(fit.residuals())
                .singleElement()
                .satisfies(each -> assertThat(each.left()).isEqualTo(2));
        assertThat(fit.constants().get(0).value()).isCloseTo(TRUE_POWER, within(1e-4));
    }

    /** A life and a factor of lives are one and the same to the measurements. */
    @Test
    void constantsThatLivesCannotTellApartAreRefused() {
        Alloy treated = Alloys.find("niti-martensitic").orElseThrow();
        FitResult result = AlloyFits.of(
                DESIGN,
                treated,
                List.of(POWER, LifeConstant.GAIN.id()),
                List.of(lives(treated, 0.1, 1)),
                Progress.NONE);
        assertThat(result)
                .isInstanceOfSatisfying(
                        FitResult.Refused.class,
                        refused -> assertThat(refused.faults().get(0).sentence())
                                .contains("do not tell the chosen constants apart"));
    }

    @Test
    void tooFewLivesAreRefused() {
        FitResult result = AlloyFits.of(DESIGN, BEFORE, List.of(POWER), List.of(), Progress.NONE);
        assertThat(result)
                .isInstanceOfSatisfying(
                        FitResult.Refused.class,
                        refused -> assertThat(refused.faults().get(0).sentence())
                                .contains("0 can be used", "lives that ended in fracture"));
    }

    private static final double[] RADII = {2.5, 3.5, 5, 7, 10, 14};
    private static final int PIECES = 20;

    /** The alloy as a library would give it back. */
    private static Alloy kept(Alloy alloy) {
        AlloyFit fit =
                new AlloyFit(alloy, List.of(), List.of(), List.of(), OptionalDouble.empty(), OptionalDouble.empty(), 0);
        return OwnAlloy.of(fit, "Own", "design", LocalDate.of(2027, 1, 1)).alloy(new ThingId("own"));
    }

    private static MeasuredLives lives(Alloy alloy, double scatter, long seed) {
        Random random = new Random(7000 + seed);
        List<MeasuredLives.Life> lives = new ArrayList<>();
        for (double radius : RADII) {
            Tube tube = new Tube(60, radius, 5, 0.1);
            double strain = Fatigue.in(tube, DESIGN, alloy, Fatigue.USUAL_RPM).strain();
            double life = Fatigue.life(strain, DESIGN.motion(), alloy);
            for (int piece = 0; piece < PIECES; piece++) {
                lives.add(new MeasuredLives.Life(tube, life * Math.exp(scatter * random.nextGaussian())));
            }
        }
        return new MeasuredLives("tubes", lives);
    }

    private static AlloyFit fitted(List<String> chosen, List<Measured> measured) {
        FitResult result = AlloyFits.of(DESIGN, BEFORE, chosen, measured, Progress.NONE);
        assertThat(result).isInstanceOf(FitResult.Fitted.class);
        return ((FitResult.Fitted) result).fit();
    }

    private static Alloy with(Alloy alloy, String name, double value) {
        List<AlloyConstant> all = new ArrayList<>(FitConstants.ofCurves(alloy));
        all.addAll(FitConstants.ofLife(alloy));
        AlloyConstant constant = all.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        return FitConstants.set(alloy, constant, value, new Band(value, value));
    }

    private static int inside(FittedConstant constant, double truth, double reach) {
        return Math.abs(constant.value() - truth) <= reach * constant.standardError() ? 1 : 0;
    }
}
