package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.comparison.Dominance;
import org.taperwright.mechanics.comparison.GivesAndTakes;
import org.taperwright.mechanics.comparison.Statement;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.work.Progress;

/** Orders and ratios of published section studies, held where users read them: in the comparison, bands and sentences included. */
class ComparedSectionsTest {
    private static final String NITI = "niti-superelastic";
    private static final String STEEL = "stainless-steel";

    /** Turpin and others, J Endod 2000;26:414; Berutti and others, J Endod 2003;29:15 (both from memory, medium). */
    @Test
    void threeFlutesWithLandsGiveFlexibilityAgainstAConvexTriangleAndTakeTorque() {
        Comparison comparison =
                compared(of("convex_triangle", NITI, Motion.ROTATION), of("u_flute", NITI, Motion.ROTATION));
        assertThat(cell(comparison, "flexibility").ratioBand().orElseThrow().low())
                .isGreaterThan(1);
        assertThat(cell(comparison, "yield-torque").ratioBand().orElseThrow().high())
                .isLessThan(1);
        GivesAndTakes said = GivesAndTakes.of(comparison, 1).orElseThrow();
        assertThat(ids(said.gives())).contains("flexibility");
        assertThat(ids(said.takes())).contains("fracture-torque");
    }

    /**
     * Walia, Brantley and Gerstein, J Endod 1988;14:346 (from memory, high): nickel-titanium of one section is two to three times
     * as flexible as steel in the elastic range. Ours, to 45 degrees and into the plateau, is at least twice over the whole band.
     */
    @Test
    void nickelTitaniumOfOneSectionIsAtLeastTwiceAsFlexibleAsSteelThroughoutTheBand() {
        Comparison comparison = compared(of("square", STEEL, Motion.FILING), of("square", NITI, Motion.FILING));
        assertThat(cell(comparison, "flexibility").ratioBand().orElseThrow().low())
                .isGreaterThan(2);
        assertThat(GivesAndTakes.of(comparison, 1).orElseThrow().text()).contains("times as flexible");
    }

    /** Thu and others, Appl Sci 2021;11:3079 (abstract read): a convex triangle and a large size raise the torque. */
    @Test
    void aConvexTriangleAndALargerSizeBearMoreTorque() {
        Comparison convex =
                compared(of("triangle", NITI, Motion.ROTATION), of("convex_triangle", NITI, Motion.ROTATION));
        assertThat(cell(convex, "fracture-torque").ratioBand().orElseThrow().low())
                .isGreaterThan(1);
        Design size25 = of("triangle", NITI, Motion.ROTATION);
        Comparison larger =
                compared(size25, Designs.with(size25).tipDiameterMm(0.3).design());
        assertThat(cell(larger, "fracture-torque").ratioBand().orElseThrow().low())
                .isGreaterThan(1);
    }

    /**
     * A triangle cuts more than a square in reaming (Villalobos, Moser and Heuer, J Endod 1980, from memory, medium) and bends more
     * easily (Schaefer and Tepel, J Endod 2001;27:299, from memory, medium): the square is dominated on the map.
     */
    @Test
    void aTriangleDominatesASquareInFlexibilityAndCutting() {
        Comparison comparison = compared(of("square", STEEL, Motion.REAMING), of("triangle", STEEL, Motion.REAMING));
        assertThat(comparison.tradeOff().places().get(0).dominance()).isEqualTo(Dominance.DOMINATED);
        assertThat(comparison.tradeOff().places().get(1).dominance()).isEqualTo(Dominance.CERTAINLY_UNDOMINATED);
    }

    /** Schaefer and Tepel, J Endod 2001;27:299 (from memory, medium): nickel-titanium is the most flexible, whatever the section. */
    @Test
    void nickelTitaniumOfAStiffSectionIsMoreFlexibleThanSteelOfAFlexibleOne() {
        Comparison comparison = compared(of("triangle", STEEL, Motion.FILING), of("square", NITI, Motion.FILING));
        assertThat(cell(comparison, "flexibility").ratioBand().orElseThrow().low())
                .isGreaterThan(1);
    }

    /**
     * Nadai's sand heap: fully plastic torques of the triangle and the square in one circle of radius R, 0.43301 and 0.94281
     * k R³ (two thirds of area times inscribed radius).
     */
    @Test
    void aTriangleYieldsAllThroughAtTheHandbooksRatioToASquare() {
        Comparison comparison = compared(of("square", STEEL, Motion.FILING), of("triangle", STEEL, Motion.FILING));
        assertThat(cell(comparison, "plastic-torque").ratio().orElseThrow())
                .isCloseTo(0.43301270 / 0.94280904, within(1e-3));
    }

    private static Design of(String section, String alloy, Motion motion) {
        return Designs.with(ReferenceDesigns.of(ReferenceDesigns.shape(section), 0.25, 0.04, 0.6))
                .name(section)
                .alloy(alloy)
                .motion(motion)
                .design();
    }

    private static Comparison compared(Design... designs) {
        return Comparisons.of(
                Stream.of(designs)
                        .map(design -> ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment())
                        .toList(),
                0);
    }

    private static ComparisonCell cell(Comparison comparison, String metric) {
        return comparison.rows().stream()
                .filter(row -> row.metric().id().equals(metric))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(1);
    }

    private static List<String> ids(List<Statement> statements) {
        return statements.stream().map(statement -> statement.metric().id()).toList();
    }
}
