package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.properties.helix.TwistedBar;
import org.taperwright.mechanics.properties.mesh.MeshFineness;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.validation.polynomial.PolynomialBar;

/** Helical factors of every family by polynomials over the whole section, Poisson's ratio not that of the references. */
class HelicalSecondMethodTest {
    private static final String SOURCE = "A second method: helical factors by polynomials over the section";
    private static final String REASON = "both methods are stiff by up to 0.2 % for t up to 2 and 0.6 % for t up to 4";
    private static final String REFINED = "Mesh refinement: helical factors";
    private static final double POISSON = 0.36;

    static Stream<String> families() {
        return Sections.families().stream()
                .filter(family -> !family.takesPoints())
                .map(family -> family.id());
    }

    @ParameterizedTest
    @MethodSource("families")
    void polynomialsGiveTheSameFactors(String family) {
        Outline outline = drawn(family);
        HelicalFactors ours = HelicalAnalysis.of(outline, POISSON);
        PolynomialBar second = new PolynomialBar(outline, POISSON);
        for (double t : new double[] {0.5, 1, 2, 3, 4}) {
            double tolerance = t <= 2 ? 3e-3 : 1e-2;
            String at = family + ", t = " + t + ": ";
            Findings.hold(SOURCE, at + "bending factor", second.bending(t), ours.bending(t), tolerance, REASON);
            Findings.hold(SOURCE, at + "torsion factor", second.torsion(t), ours.torsion(t), tolerance, REASON);
        }
    }

    /** Of the method itself: how far the mesh in use is from one that is six times as fine, and that finer ones are nearer. */
    @ParameterizedTest
    @ValueSource(strings = {"square", "triangle", "scalloped", "double-s"})
    void refiningTheMeshBringsTheFactorsNearerToTheFinest(String family) {
        Contour contour = Contour.of(drawn(family));
        double[] finest = factors(contour, 0.4);
        List<String> steps = new ArrayList<>();
        double before = Double.MAX_VALUE;
        for (double size : new double[] {1, 0.7}) {
            double[] here = factors(contour, size);
            double[] error = new double[2];
            for (int k = 0; k < here.length; k++) {
                error[k / 2] = Math.max(error[k / 2], Math.abs(here[k] / finest[k] - 1));
            }
            assertThat(error[0]).as("t = 2, sides times %s", size).isLessThan(2e-3);
            assertThat(error[1])
                    .as("t = 4, sides times %s", size)
                    .isLessThan(6e-3)
                    .isLessThan(before);
            before = error[1];
            steps.add(String.format(
                    Locale.ROOT, "sides times %.1f: %.0e at t = 2, %.0e at t = 4", size, error[0], error[1]));
        }
        Findings.remark(
                REFINED,
                family + ", greater error of the bending and torsion factors against sides times 0.4: "
                        + String.join("; ", steps) + ".");
    }

    /** Bending and torsion at t = 2, then at t = 4. */
    private static double[] factors(Contour contour, double size) {
        TwistedBar bar = SectionMesh.of(contour, MeshFineness.HELIX.times(size), true)
                .flatMap(mesh -> TwistedBar.on(mesh, POISSON))
                .orElseThrow();
        TwistedBar.Stiffness none = bar.stiffness(0).orElseThrow();
        double[] factors = new double[4];
        for (int k = 0; k < 2; k++) {
            TwistedBar.Stiffness twisted = bar.stiffness(2 + 2 * k).orElseThrow();
            factors[2 * k] = twisted.bending() / none.bending();
            factors[2 * k + 1] = twisted.torsion() / none.torsion();
        }
        return factors;
    }

    private static Outline drawn(String family) {
        OutlineResult result = Sections.outline(SectionShape.of(family, Map.of()));
        return ((OutlineResult.Drawn) result).outline();
    }
}
