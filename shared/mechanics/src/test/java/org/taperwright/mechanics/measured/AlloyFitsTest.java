package org.taperwright.mechanics.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Progress;

/** Synthetic measurements of known constants: curves of the bench tests with normal scatter laid on them. */
class AlloyFitsTest {
    private static final Alloy BEFORE = Alloys.find("niti-superelastic").orElseThrow();
    private static final Design DESIGN = Designs.with(BenchDesigns.of("square", 0.25, 0.04))
            .alloy(BEFORE.id())
            .design();
    private static final BladeSections SECTIONS = BladeSections.of(DESIGN);

    private static final double YOUNG = 47_000;
    private static final double PLATEAU = 520;
    private static final double STRENGTH = 850;

    /** The alloy that the measurements are made of. */
    private static final Alloy TRUE =
            with(with(with(BEFORE, "youngMpa", YOUNG), "yieldMpa", PLATEAU), Fracture.SHEAR_STRENGTH.name(), STRENGTH);

    private static final double[] BENT =
            DoubleStream.iterate(3, a -> a <= 45, a -> a + 3).toArray();

    @Test
    void curvesWithoutScatterGiveTheirConstantsBack() {
        AlloyFit fit = fitted(
                List.of("youngMpa", "yieldMpa", Fracture.SHEAR_STRENGTH.name()),
                List.of(curve(BenchCurve.BENDING, BENT, 0, 1), curve(BenchCurve.TWISTING, twists(), 0, 2)));
        assertThat(fit.constants().get(0).value()).isCloseTo(YOUNG, within(1e-4 * YOUNG));
        assertThat(fit.constants().get(1).value()).isCloseTo(PLATEAU, within(1e-4 * PLATEAU));
        assertThat(fit.constants().get(2).value()).isCloseTo(STRENGTH, within(1e-3 * STRENGTH));
        assertThat(fit.residuals())
                .allSatisfy(each -> assertThat(each.relative()).isLessThan(1e-5));
    }

    /**
     * Of many fits to different scatter the true constants lie within each one's 90 % interval about 9 times in 10, and within
     * the 90 % ellipse of both together (chi-square of two degrees). The bounds hold 99.9 % of binomial draws.
     */
    @Test
    void theStatedCovarianceCoversTheKnownConstants() {
        int fits = 60;
        double ellipse = new ChiSquaredDistribution(2).inverseCumulativeProbability(0.9);
        int youngInside = 0;
        int plateauInside = 0;
        int bothInside = 0;
        for (int seed = 0; seed < fits; seed++) {
            AlloyFit fit =
                    fitted(List.of("youngMpa", "yieldMpa"), List.of(curve(BenchCurve.BENDING, BENT, 0.005, seed)));
            youngInside += inside(fit.constants().get(0), YOUNG);
            plateauInside += inside(fit.constants().get(1), PLATEAU);
            bothInside += distance(fit) <= ellipse ? 1 : 0;
        }
        // the scatter is itself estimated from 13 degrees of freedom, which t takes for 1.77 rather than 1.645
        BinomialDistribution expected = new BinomialDistribution(null, fits, 0.88);
        int least = expected.inverseCumulativeProbability(0.0005);
        int most = expected.inverseCumulativeProbability(0.9995);
        assertThat(youngInside).as("modulus").isBetween(least, most);
        assertThat(plateauInside).as("plateau").isBetween(least, most);
        assertThat(bothInside).as("both").isBetween(least - 2, most);
    }

    @Test
    void aFitIsANewAlloyAndLeavesTheOldOneAsItWas() {
        AlloyFit fit = fitted(List.of("youngMpa"), List.of(curve(BenchCurve.BENDING, BENT, 0.01, 7)));
        assertThat(fit.alloy().id()).isEqualTo("niti-superelastic-fitted");
        assertThat(fit.alloy().label()).isEqualTo(BEFORE.label() + ", fitted");
        assertThat(fit.alloy().source()).startsWith("Young's modulus: fitted to synthetic bending");
        assertThat(fit.alloy().youngBand().high() - fit.alloy().youngBand().low())
                .isLessThan(BEFORE.youngBand().high() - BEFORE.youngBand().low());
        assertThat(fit.alloy().constants()).isEqualTo(BEFORE.constants());
        assertThat(Alloys.all()).contains(BEFORE).doesNotContain(fit.alloy());
    }

    @Test
    void aConstantThatTheMeasurementsWouldHaveBeyondItsBandIsHeldAtTheEdgeAndSaidToBe() {
        double beyond = BEFORE.yieldBand().high() * 1.3;
        Alloy stronger = with(BEFORE, "yieldMpa", beyond);
        AlloyFit fit = fitted(List.of("yieldMpa"), List.of(of(stronger, BenchCurve.BENDING, BENT, 0, 1)));
        FittedConstant plateau = fit.constants().get(0);
        assertThat(plateau.atEdge()).isTrue();
        assertThat(plateau.value()).isCloseTo(BEFORE.yieldBand().high(), within(1e-3 * beyond));
        assertThat(plateau.value()).isLessThanOrEqualTo(BEFORE.yieldBand().high());
        assertThat(plateau.band()).isEqualTo(BEFORE.yieldBand());
    }

    @Test
    void tooFewPointsAndUnknownConstantsAreRefusedWithWhatWouldDo() {
        MeasuredCurve two =
                new MeasuredCurve(BenchCurve.BENDING, "two", List.of(new CurvePoint(10, 1), new CurvePoint(60, 9)));
        FitResult result =
                AlloyFits.of(DESIGN, BEFORE, List.of("youngMpa", "yieldMpa", "hardness"), List.of(two), Progress.NONE);
        assertThat(result)
                .isInstanceOfSatisfying(
                        FitResult.Refused.class,
                        refused -> assertThat(refused.faults())
                                .satisfiesExactly(
                                        unknown -> assertThat(unknown.sentence())
                                                .contains("\"hardness\"", "yieldMpa", "asymmetry"),
                                        few -> assertThat(few.sentence())
                                                .contains("1 can be used", "more than the 2 constants")));
    }

    @Test
    void residualsAreMeasuredLessComputedAtTheSameAngles() {
        MeasuredCurve measured = curve(BenchCurve.TWISTING, twists(), 0.02, 3);
        Residuals own = Residuals.of(measured, DESIGN, TRUE);
        assertThat(own.points()).hasSameSizeAs(measured.used());
        assertThat(own.relative()).isBetween(0.01, 0.04);
        assertThat(own.points().get(4).measured() - own.points().get(4).difference())
                .isEqualTo(own.points().get(4).computed());
        assertThat(own.left())
                .isEqualTo(measured.points().size() - measured.used().size());
    }

    private static AlloyFit fitted(List<String> chosen, List<MeasuredCurve> curves) {
        FitResult result = AlloyFits.of(DESIGN, BEFORE, chosen, curves, Progress.NONE);
        assertThat(result).isInstanceOf(FitResult.Fitted.class);
        return ((FitResult.Fitted) result).fit();
    }

    private static double[] twists() {
        return DoubleStream.iterate(20, a -> a <= 400, a -> a + 20).toArray();
    }

    private static MeasuredCurve curve(BenchCurve test, double[] angles, double scatter, long seed) {
        return of(TRUE, test, angles, scatter, seed);
    }

    private static MeasuredCurve of(Alloy alloy, BenchCurve test, double[] angles, double scatter, long seed) {
        double[] exact = ComputedCurve.of(test, DESIGN, alloy, SECTIONS).at(angles);
        double greatest = DoubleStream.of(exact).max().orElseThrow();
        Random random = new Random(1000 + seed);
        List<CurvePoint> points = new ArrayList<>();
        for (int i = 0; i < angles.length; i++) {
            points.add(new CurvePoint(angles[i], exact[i] + scatter * greatest * random.nextGaussian()));
        }
        return new MeasuredCurve(test, "synthetic " + test.label().toLowerCase(java.util.Locale.ROOT), points);
    }

    private static Alloy with(Alloy alloy, String name, double value) {
        AlloyConstant constant = AlloyConstant.all(alloy).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        return FitConstants.set(alloy, constant, value, new Band(value, value));
    }

    private static int inside(FittedConstant constant, double truth) {
        return Math.abs(constant.value() - truth) <= 1.645 * constant.standardError() ? 1 : 0;
    }

    /** Mahalanobis distance of the known constants. */
    private static double distance(AlloyFit fit) {
        double[][] covariance = fit.covariance().stream()
                .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray())
                .toArray(double[][]::new);
        ArrayRealVector off = new ArrayRealVector(new double[] {
            fit.constants().get(0).value() - YOUNG, fit.constants().get(1).value() - PLATEAU
        });
        return new LUDecomposition(new Array2DRowRealMatrix(covariance), 0)
                .getSolver()
                .solve(off)
                .dotProduct(off);
    }
}
