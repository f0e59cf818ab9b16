package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.design.Design;

class ElasticaTest {
    private static final double LENGTH = 17;
    private static final RodGrid GRID = RodGrid.between(BenchDesigns.of("square", 0.3, 0), 3, 3 + LENGTH);

    private static Elastica uniform(double stiffness) {
        double[] compliance = new double[GRID.nodes()];
        Arrays.fill(compliance, 1 / stiffness);
        return new Elastica(GRID, new LinearCurvature(compliance));
    }

    /** Elliptic integrals: Bisshopp and Drucker (1945); P L^2/EI, shortening/L, deflection/L, end slope. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.01591896, 0.16214358, 0.24453365",
        "1, 0.05643324, 0.30172077, 0.46135195",
        "2, 0.16064172, 0.49345748, 0.78174983",
        "4, 0.32894124, 0.66996418, 1.12123935",
        "10, 0.5549956, 0.81060902, 1.43028554"
    })
    void aUniformRodBendsAsTheEllipticIntegralsSay(double load, double shortening, double deflection, double slope) {
        double stiffness = 250;
        double chord = Math.atan2(deflection, 1 - shortening);

        Equilibrium found = uniform(stiffness).along(chord).get(0);

        assertThat(found.forceN() * LENGTH * LENGTH / stiffness).isCloseTo(load, within(2e-6 * load));
        assertThat(found.endSlope()).isCloseTo(slope, within(1e-6));
        assertThat(found.deflectionMm() / LENGTH).isCloseTo(deflection, within(1e-6));
    }

    /** An independent solver's rods of E = 193 GPa on a round shaft (residuals below 1e-13): a circle, a rhombus' I1. */
    @ParameterizedTest
    @CsvSource({
        "0.02, 0.04908738521234052, 26.870671427793738, 54.99462834994003",
        "0.04, 0.014583333333333332, 21.595554153586505, 52.32130427582628"
    })
    void aTaperingRodBendsAsAnIndependentSolverSays(double taper, double secondMoment, double moment, double slopeDeg) {
        Design design = BenchDesigns.of("square", 0.25, taper);
        RodGrid grid = RodGrid.between(design, 3, 20);
        double[] compliance = new double[grid.nodes()];
        for (int node = 0; node < compliance.length; node++) {
            double level = grid.levelMm(node);
            double unit = level > 16 ? Math.PI / 64 : secondMoment;
            compliance[node] = 1 / (193_000 * unit * Math.pow(design.diameterMm(level), 4));
        }
        Equilibrium found = new Elastica(grid, new LinearCurvature(compliance))
                .along(Math.PI / 4)
                .get(0);
        assertThat(found.momentNmm()).isCloseTo(moment, within(1e-6 * moment));
        assertThat(Math.toDegrees(found.endSlope())).isCloseTo(slopeDeg, within(1e-6 * slopeDeg));
    }

    @Test
    void aSmallDeflectionIsTheCantileversOfTheHandbooks() {
        double stiffness = 250;
        double chord = 1e-4;
        Equilibrium found = uniform(stiffness).along(chord).get(0);
        assertThat(found.deflectionMm())
                .isCloseTo(found.forceN() * Math.pow(LENGTH, 3) / (3 * stiffness), within(1e-9));
        assertThat(found.endSlope()).isCloseTo(1.5 * chord, within(1e-10));
    }

    @Property(tries = 50)
    void theMomentScalesWithTheStiffness(@ForAll @DoubleRange(min = 1, max = 1e5) double stiffness) {
        double one = uniform(1).along(Math.PI / 4).get(0).momentNmm();
        double many = uniform(stiffness).along(Math.PI / 4).get(0).momentNmm();
        assertThat(many / stiffness).isCloseTo(one, within(1e-8 * one));
    }

    @Test
    void theWayThroughSmallerAnglesDoesNotMatter() {
        Elastica rod = uniform(250);
        List<Equilibrium> curve = rod.along(0, 0.1, 0.3, 0.5, Math.PI / 4);
        Equilibrium direct = rod.along(Math.PI / 4).get(0);
        assertThat(curve.get(4).momentNmm()).isCloseTo(direct.momentNmm(), within(1e-9));
        assertThat(curve).extracting(Equilibrium::momentNmm).isSorted();
    }

    @Test
    void aLawWithoutAnEquilibriumIsReportedAndNeverAnswered() {
        CurvatureLaw rigid = new LinearCurvature(new double[GRID.nodes()]);
        assertThatThrownBy(() -> new Elastica(GRID, rigid).along(0.5))
                .isInstanceOf(Unsolved.class)
                .hasMessageContaining("degrees");
    }
}
