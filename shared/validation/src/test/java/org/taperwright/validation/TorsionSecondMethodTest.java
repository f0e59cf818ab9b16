package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.mesh.MeshFineness;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.torsion.TorsionSolution;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** The torsion constant by a boundary integral equation, and how it settles as the mesh is refined. */
class TorsionSecondMethodTest {
    private static final String SECOND = "A second method: torsion constant by boundary integrals";
    private static final String REFINED = "Mesh refinement: torsion constant";
    private static final String BOTH = "the integrals themselves settle to about 3e-5 with 700 elements";

    @ParameterizedTest
    @ValueSource(strings = {"square", "triangle", "convex_triangle", "rhombus07", "teardrop", "u_flute", "plus_fillet"})
    void boundaryIntegralsGiveTheSameTorsionConstant(String name) {
        hold(name, ReferenceOutline.named(name));
    }

    @Test
    void boundaryIntegralsGiveTheSameTorsionConstantOfSectionsOutsideTheReference() {
        hold("double-S as drawn at first", drawn(SectionShape.of("double-s", Map.of())));
        hold("square with rounded edges of 0.03 d", drawn(new SectionShape("square", Map.of(), 0.03, 0, List.of())));
        hold("triangle with lands of 0.1 d", drawn(new SectionShape("triangle", Map.of(), 0, 0.1, List.of())));
    }

    private static void hold(String name, Outline outline) {
        double second = BoundaryIntegralTorsion.of(outline, 350);
        double ours = SectionAnalysis.of(outline).torsionConstant();
        Findings.hold(SECOND, name + ": J, d⁴", second, ours, 1e-4, BOTH);
    }

    private static Outline drawn(SectionShape shape) {
        return ((OutlineResult.Drawn) Sections.outline(shape)).outline();
    }

    @ParameterizedTest
    @ValueSource(strings = {"square", "rhombus07", "u_flute", "plus_fillet"})
    void refiningTheMeshBringsTheTorsionConstantNearerToTheReference(String name) {
        double expected = ReferenceFile.read("sections.json")
                .get("sections")
                .get(name)
                .get("J")
                .asDouble();
        Contour contour = Contour.of(ReferenceOutline.named(name));
        List<String> steps = new ArrayList<>();
        double before = Double.MAX_VALUE;
        for (double factor : new double[] {2, 1, 0.5, 0.25}) {
            SectionMesh mesh = SectionMesh.of(contour, MeshFineness.TORSION.times(factor), true)
                    .orElseThrow();
            TorsionSolution solution = TorsionSolution.on(mesh).orElseThrow();
            double error = Math.abs(solution.constant() / expected - 1);
            assertThat(error).as("sides times %s", factor).isLessThan(before / 2);
            before = error;
            steps.add(String.format(Locale.ROOT, "%d elements: %.1e", mesh.elements(), error));
        }
        assertThat(before).isLessThan(2e-6);
        Findings.remark(REFINED, name + ", error of J: " + String.join("; ", steps) + ".");
    }
}
