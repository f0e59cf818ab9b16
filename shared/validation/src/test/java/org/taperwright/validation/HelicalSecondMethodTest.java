package org.taperwright.validation;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.validation.polynomial.PolynomialBar;

/** Helical factors of every family by polynomials over the whole section, Poisson's ratio not that of the references. */
class HelicalSecondMethodTest {
    private static final String SOURCE = "A second method: helical factors by polynomials over the section";
    private static final String REASON = "both methods are stiff by up to 0.2 % for t up to 2 and 0.6 % for t up to 4";
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

    private static Outline drawn(String family) {
        OutlineResult result = Sections.outline(SectionShape.of(family, Map.of()));
        return ((OutlineResult.Drawn) result).outline();
    }
}
