package org.taperwright.mechanics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.quantity.Band;

class SensitivityTest {
    private static UncertainConstant about(String name, double value, double low, double high) {
        return new UncertainConstant(name, value, Optional.of(new Band(low, high)));
    }

    private static Sensitivity surface(List<UncertainConstant> constants, ToDoubleFunction<double[]> result) {
        double[] at = constants.stream().mapToDouble(UncertainConstant::value).toArray();
        return Sensitivity.of(
                constants,
                new double[] {result.applyAsDouble(at)},
                values -> Optional.of(new double[] {result.applyAsDouble(values)}));
    }

    /** What rises with one constant alone has that constant's band, carried over. */
    @Test
    void theBandOfWhatRisesWithOneConstantIsThatOfTheConstant() {
        UncertainConstant known = new UncertainConstant("known", 7, Optional.empty());
        Sampled cubed = surface(List.of(about("a", 2, 1.5, 3), known), c -> c[0] * c[0] * c[0])
                .byRatio(0);
        assertThat(cubed.value()).isEqualTo(8);
        assertThat(cubed.band().orElseThrow().low()).isCloseTo(Math.pow(1.5, 3), within(0.1));
        assertThat(cubed.band().orElseThrow().high()).isCloseTo(27, within(0.5));
    }

    /** Equal shares of two logarithms add to a triangle: 5 % of it lie beyond {@code (1 - sqrt 0.1) / 0.45} half-widths. */
    @Test
    void theBandOfAProductIsThatOfTheSumOfLogarithms() {
        Sampled product = surface(List.of(about("a", 1, 0.5, 2), about("b", 1, 0.5, 2)), c -> c[0] * c[1])
                .byRatio(0);
        double edge = (1 - Math.sqrt(0.1)) / 0.9 * 2 * Math.log(2);
        assertThat(Math.log(product.band().orElseThrow().high())).isCloseTo(edge, within(0.1));
        assertThat(Math.log(product.band().orElseThrow().low())).isCloseTo(-edge, within(0.1));
    }

    /** The same triangle of a sum. */
    @Test
    void theBandOfASumIsThatOfTheTriangle() {
        Sampled sum = surface(List.of(about("a", 5, 4, 6), about("b", 5, 4, 6)), c -> c[0] + c[1])
                .byDifference(0);
        double edge = (1 - Math.sqrt(0.1)) / 0.9 * 2;
        assertThat(sum.band().orElseThrow().high()).isCloseTo(10 + edge, within(0.15));
        assertThat(sum.band().orElseThrow().low()).isCloseTo(10 - edge, within(0.15));
    }

    /** max(0, c) cannot be less than zero, whatever the straight line says. */
    @Test
    void aResultThatReachesZeroStaysThere() {
        List<UncertainConstant> constants = List.of(about("a", 1, -1, 3), about("b", 0, -1, 1));
        Sampled rectified = surface(constants, c -> Math.max(0, c[0] + c[1])).byRatio(0);
        assertThat(rectified.band().orElseThrow().low()).isZero();
        assertThat(rectified.band().orElseThrow().high()).isBetween(2.5, 4.0);
    }

    /** A straight result has the same band when it can be solved only a quarter of the way to an edge. */
    @Test
    void anEdgeWithoutASolutionIsNearedByHalves() {
        List<UncertainConstant> constants = List.of(about("a", 10, 6, 14));
        Sampled whole = surface(constants, c -> c[0]).byDifference(0);
        Sampled quarter = Sensitivity.of(
                        constants,
                        new double[] {10},
                        c -> c[0] < 8.9 ? Optional.empty() : Optional.of(new double[] {c[0]}))
                .byDifference(0);
        assertThat(quarter.band()).isEqualTo(whole.band());
    }

    @Test
    void anAlloySpreadsAroundItself() {
        for (Alloy alloy : Alloys.all()) {
            List<UncertainConstant> constants = AlloyConstant.drawn(alloy);
            double[] same =
                    constants.stream().mapToDouble(UncertainConstant::value).toArray();
            assertThat(AlloyConstant.with(alloy, same).tension()).isEqualTo(alloy.tension());
            assertThat(AlloyConstant.with(alloy, same).shear()).isEqualTo(alloy.shear());
            assertThat(constants)
                    .extracting(UncertainConstant::name)
                    .doesNotHaveDuplicates()
                    .allMatch(name -> name.startsWith(alloy.id()));
        }
    }
}
