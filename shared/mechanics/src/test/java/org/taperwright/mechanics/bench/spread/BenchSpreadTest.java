package org.taperwright.mechanics.bench.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.UncertainConstant;

/** The few solves at the edges of the constants' bands against all the samples solved one by one. */
class BenchSpreadTest {
    @ParameterizedTest
    @CsvSource({
        "square, 0.25, 0.02, stainless-steel",
        "triangle, 0.25, 0.04, niti-superelastic",
        "scalloped, 0.20, 0.06, niti-superelastic",
        "triangle, 0.30, 0.04, niti-r-phase",
        "rhombus, 0.25, 0.06, niti-martensitic"
    })
    void theFewSolvesOfATwistingTestGiveNearlyTheBandsOfTwoHundred(
            String family, double tip, double taper, String alloyId) {
        Design design = BenchDesigns.of(family, tip, taper);
        Alloy alloy = Alloys.find(alloyId).orElseThrow();
        BladeSections sections = BladeSections.of(design);
        TwistingResult middle = TwistingTest.run(design, alloy, sections);
        TwistingSpread few = TwistingSpread.of(design, alloy, middle);
        List<TwistingResult> all = solved(alloy, drawn -> TwistingTest.run(design, drawn, sections));
        near(few.yieldTorqueNmm(), all, TwistingResult::yieldTorqueNmm, 1e-9);
        near(few.plasticTorqueNmm(), all, TwistingResult::plasticTorqueNmm, 1e-9);
        near(few.fractureTorqueNmm(), all, TwistingResult::fractureTorqueNmm, 0.02);
        near(few.fractureAngleDeg(), all, TwistingResult::fractureAngleDeg, 0.03);
    }

    /** The greatest strain of steel, where bending gathers in one cross-section, is the least straight of all. */
    @ParameterizedTest
    @CsvSource({
        "square, 0.25, 0.02, stainless-steel",
        "triangle, 0.25, 0.04, niti-superelastic",
        "rhombus, 0.25, 0.06, niti-martensitic"
    })
    void theFewSolvesOfABendingTestGiveNearlyTheBandsOfTwoHundred(
            String family, double tip, double taper, String alloyId) {
        Design design = BenchDesigns.of(family, tip, taper);
        Alloy alloy = Alloys.find(alloyId).orElseThrow();
        BladeSections sections = BladeSections.of(design);
        BendingSpread few = BendingSpread.of(design, alloy, BendingTest.run(design, alloy, sections));
        List<BendingResult> all = solved(alloy, drawn -> BendingTest.run(design, drawn, sections));
        near(few.momentNmm(), all, BendingResult::momentNmm, 0.03);
        near(few.forceN(), all, BendingResult::forceN, 0.03);
        near(few.endSlopeDeg(), all, BendingResult::endSlopeDeg, 0.01);
        near(few.greatestStrain(), all, BendingResult::greatestStrain, alloy.superelastic() ? 0.03 : 0.15);
        near(few.setDeg(), all, result -> result.setDeg().orElse(0), 0.03);
    }

    /** Ratios of the same samples, both solved one by one, for two blades of one alloy. */
    @ParameterizedTest
    @CsvSource({"stainless-steel, 0.03", "niti-superelastic, 0.02", "niti-martensitic, 0.02"})
    void theBandOfARatioIsNearlyThatOfTwoHundredPairs(String alloyId, double tolerance) {
        Alloy alloy = Alloys.find(alloyId).orElseThrow();
        Design thick = BenchDesigns.of("square", 0.30, 0.04);
        Design thin = BenchDesigns.of("triangle", 0.25, 0.02);
        List<TwistingResult> all = twisted(thick, alloy);
        List<TwistingResult> others = twisted(thin, alloy);
        Sampled few = spread(thick, alloy)
                .fractureTorqueNmm()
                .over(spread(thin, alloy).fractureTorqueNmm());
        near(
                few,
                IntStream.range(0, all.size()).boxed().toList(),
                i -> all.get(i).fractureTorqueNmm() / others.get(i).fractureTorqueNmm(),
                tolerance);
    }

    private static List<TwistingResult> twisted(Design design, Alloy alloy) {
        BladeSections sections = BladeSections.of(design);
        return solved(alloy, drawn -> TwistingTest.run(design, drawn, sections));
    }

    private static TwistingSpread spread(Design design, Alloy alloy) {
        return TwistingSpread.of(design, alloy, TwistingTest.run(design, alloy, BladeSections.of(design)));
    }

    /** Every sample of a cube, in its order. */
    private static <R> List<R> solved(Alloy alloy, Function<Alloy, R> test) {
        List<UncertainConstant> constants = AlloyConstant.drawn(alloy);
        List<R> results = new ArrayList<>();
        cube(constants).sample(0, shares -> {
            double[] values = new double[shares.length];
            for (int k = 0; k < shares.length; k++) {
                values[k] = constants.get(k).at(shares[k]);
            }
            results.add(test.apply(AlloyConstant.with(alloy, values)));
            return 0;
        });
        return results;
    }

    private static LatinHypercube cube(List<UncertainConstant> constants) {
        return LatinHypercube.of(constants.stream().map(UncertainConstant::name).toList());
    }

    private static <R> void near(Sampled few, List<R> all, ToDoubleFunction<R> number, double tolerance) {
        double[] sorted = all.stream().mapToDouble(number).sorted().toArray();
        Band band = few.band().orElseThrow();
        double low = Math.min(few.value(), sorted[10]);
        double high = Math.max(few.value(), sorted[189]);
        assertThat(band.low()).isCloseTo(low, within(tolerance * Math.abs(high)));
        assertThat(band.high()).isCloseTo(high, within(tolerance * Math.abs(high)));
    }
}
