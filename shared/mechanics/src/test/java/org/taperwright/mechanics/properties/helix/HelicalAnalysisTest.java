package org.taperwright.mechanics.properties.helix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/** What must hold of any twisted bar, whatever its section. */
class HelicalAnalysisTest {
    private static final double[] TWISTS = {0.1, 0.7, 1.3, 2, 3.1, 4};

    static Stream<Outline> sections() {
        return Stream.of("square", "triangle", "rhombus", "scalloped", "double-s", "teardrop", "offset-rectangle")
                .map(HelicalAnalysisTest::drawn);
    }

    /** A circle that turns about its own axis is the same bar: a closed form. */
    @Test
    void turningACircleChangesNothing() {
        HelicalFactors circle = HelicalAnalysis.of(circle(), 0.3);
        for (double t : TWISTS) {
            assertThat(circle.bending(t)).isCloseTo(1, within(1e-9));
            assertThat(circle.torsion(t)).isCloseTo(1, within(1e-9));
        }
    }

    /** At no twist the torsion constant is St Venant's, here by polynomials, there by finite elements. */
    @ParameterizedTest
    @MethodSource("sections")
    void theStraightBarIsTheLimit(Outline outline) {
        HelicalFactors factors = HelicalAnalysis.of(outline, 0.3);
        assertThat(factors.bending(0)).isEqualTo(1);
        assertThat(factors.torsion(0)).isEqualTo(1);
        assertThat(factors.bending(0.01)).isCloseTo(1, within(2e-4));
        double j = 16 * SectionAnalysis.of(outline).torsionConstant();
        HarmonicWeights weights = new HarmonicWeights(Contour.of(outline));
        double[][] axial = new EnergyMatrix(
                        weights,
                        Fields.displacements(0, weights.fold()),
                        List.of(Fields.extension(), Fields.torsion()),
                        0.3)
                .relaxed(0);
        assertThat(axial[1][1] * 2.6 / j).isBetween(0.9999, 1.01);
        assertThat(axial[0][0]).isCloseTo(4 * SectionAnalysis.of(outline).area(), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("sections")
    void turningTheSectionOrItsTwistTheOtherWayChangesNothing(Outline outline) {
        HelicalFactors as = HelicalAnalysis.of(outline, 0.3);
        HelicalFactors turned = HelicalAnalysis.of(Outlines.turned(outline, 0.7), 0.3);
        for (double t : TWISTS) {
            assertThat(turned.bending(t)).isCloseTo(as.bending(t), within(1e-6));
            assertThat(turned.torsion(t)).isCloseTo(as.torsion(t), within(1e-6));
            assertThat(as.bending(-t)).isEqualTo(as.bending(t));
        }
    }

    @ParameterizedTest
    @MethodSource("sections")
    void aMirroredSectionHasTheSameFactors(Outline outline) {
        HelicalFactors as = HelicalAnalysis.of(outline, 0.3);
        HelicalFactors mirrored = HelicalAnalysis.of(mirrored(outline), 0.3);
        for (double t : TWISTS) {
            assertThat(mirrored.bending(t)).isCloseTo(as.bending(t), within(1e-6));
            assertThat(mirrored.torsion(t)).isCloseTo(as.torsion(t), within(1e-6));
        }
    }

    /** Twice as many twists to run between change the factors by less than a tenth of what is wanted of them. */
    @ParameterizedTest
    @MethodSource("sections")
    void moreTwistsToRunBetweenChangeLittle(Outline outline) {
        HelicalFactors as = HelicalAnalysis.of(outline, 0.3);
        HelicalFactors finer = HelicalAnalysis.compute(outline, 0.3, 13);
        for (double t : TWISTS) {
            assertThat(as.bending(t) / finer.bending(t)).isCloseTo(1, within(3e-4));
            assertThat(as.torsion(t) / finer.torsion(t)).isCloseTo(1, within(3e-4));
        }
    }

    @Test
    void beyondTheRangeTheLastValueStands() {
        HelicalFactors square = HelicalAnalysis.of(drawn("square"), 0.3);
        assertThat(square.covers(4)).isTrue();
        assertThat(square.covers(4.1)).isFalse();
        assertThat(square.bending(9)).isEqualTo(square.bending(4));
    }

    @Test
    void anImpossiblePoissonsRatioIsRefused() {
        assertThatThrownBy(() -> HelicalAnalysis.of(drawn("square"), 0.5)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Outline circle() {
        Point centre = new Point(0, 0);
        return new Outline(
                List.of(new Segment.Arc(centre, 0.5, 0, Math.PI), new Segment.Arc(centre, 0.5, Math.PI, 2 * Math.PI)));
    }

    private static Outline mirrored(Outline outline) {
        List<Segment> segments = new ArrayList<>(
                outline.segments().stream().map(HelicalAnalysisTest::mirrored).toList());
        Collections.reverse(segments);
        return new Outline(segments);
    }

    private static Segment mirrored(Segment segment) {
        if (segment instanceof Segment.Arc arc) {
            return new Segment.Arc(
                    new Point(arc.centre().x(), -arc.centre().y()), arc.radius(), -arc.toAngle(), -arc.fromAngle());
        }
        return new Segment.Line(flipped(segment.end()), flipped(segment.start()));
    }

    private static Point flipped(Point p) {
        return new Point(p.x(), -p.y());
    }

    private static Outline drawn(String family) {
        OutlineResult result = Sections.outline(SectionShape.of(family, Map.of()));
        return ((OutlineResult.Drawn) result).outline();
    }
}
