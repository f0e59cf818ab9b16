package org.taperwright.mechanics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloySpread;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

class SensitivityTest {
    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }

    /** What rises with one constant alone has that constant's band, carried over. */
    @Test
    void theBandOfWhatRisesWithOneConstantIsThatOfTheConstant() {
        Reading cubed = Sensitivity.reading(List.of(about(2, 1.5, 3), Reading.of(7)), c -> c[0] * c[0] * c[0]);
        assertThat(cubed.value()).isEqualTo(8);
        assertThat(cubed.band().orElseThrow().low()).isCloseTo(Math.pow(1.5, 3), within(0.1));
        assertThat(cubed.band().orElseThrow().high()).isCloseTo(27, within(0.5));
    }

    /** Equal shares of two logarithms add to a triangle: 5 % of it lie beyond {@code (1 - sqrt 0.1) / 0.45} half-widths. */
    @Test
    void theBandOfAProductIsThatOfTheSumOfLogarithms() {
        Reading product = Sensitivity.reading(List.of(about(1, 0.5, 2), about(1, 0.5, 2)), c -> c[0] * c[1]);
        double edge = (1 - Math.sqrt(0.1)) / 0.9 * 2 * Math.log(2);
        assertThat(Math.log(product.band().orElseThrow().high())).isCloseTo(edge, within(0.08));
        assertThat(Math.log(product.band().orElseThrow().low())).isCloseTo(-edge, within(0.08));
    }

    @Test
    void anAlloySpreadsAroundItself() {
        for (Alloy alloy : Alloys.all()) {
            AlloySpread spread = AlloySpread.of(alloy);
            double[] same =
                    spread.constants().stream().mapToDouble(Reading::value).toArray();
            assertThat(spread.with(same).tension()).isEqualTo(alloy.tension());
            assertThat(spread.with(same).shear()).isEqualTo(alloy.shear());
        }
    }

    /** The same samples solved one by one: the few solves at the edges give nearly their band. */
    @Test
    void theFewSolvesOfABendingTestGiveNearlyTheBandOfTwoHundred() {
        Design design = BenchDesigns.of("triangle", 0.25, 0.04);
        BladeSections sections = BladeSections.of(design);
        AlloySpread spread = AlloySpread.of(Alloys.find("niti-superelastic").orElseThrow());
        List<Reading> constants = spread.constants();
        Band few = Sensitivity.reading(
                        constants, values -> BendingTest.momentNmm(design, spread.with(values), sections, 45))
                .band()
                .orElseThrow();
        Band all = new LatinHypercube(constants.size()).band(shares -> {
            double[] values = new double[shares.length];
            for (int k = 0; k < shares.length; k++) {
                values[k] = drawn(constants.get(k), (shares[k] - 0.5) / 0.45);
            }
            return BendingTest.momentNmm(design, spread.with(values), sections, 45);
        });
        assertThat(few.low()).isCloseTo(all.low(), within(0.06 * all.low()));
        assertThat(few.high()).isCloseTo(all.high(), within(0.06 * all.high()));
    }

    private static double drawn(Reading constant, double beyond) {
        Band band = constant.band().orElseThrow();
        double edge = beyond < 0 ? band.low() : band.high();
        return constant.value() + Math.abs(beyond) * (edge - constant.value());
    }
}
