package org.taperwright.mechanics.properties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;

/** The sections of a blade that goes from a triangle to a square, and its profile. */
class BladeSectionsTest {
    private final Design design = new Design(
            "changing",
            "",
            0.25,
            List.of(new TaperSegment(0, 16, 0.04)),
            OptionalDouble.empty(),
            25,
            List.of(
                    new SectionStation(2, SectionShape.of("triangle", Map.of("sagitta", 0.05))),
                    new SectionStation(12, SectionShape.of("square", Map.of()))),
            List.of(new FluteStation(0, 1.2), new FluteStation(16, 0.8)),
            Hand.CLOCKWISE,
            new Tip(TipKind.PASSIVE, 75),
            "stainless-steel",
            Making.GROUND,
            Motion.ROTATION);

    private final BladeSections sections = BladeSections.of(design);

    @ParameterizedTest
    @ValueSource(doubles = {2.7, 4.4, 6.1, 8.3, 11.2})
    void numbersBetweenTheStationsAreThoseOfTheBlendedOutline(double level) {
        SectionProperties between = sections.at(level);
        SectionProperties exact = SectionAnalysis.of(sections.outlineAt(level));
        assertThat(between.area()).isCloseTo(exact.area(), withPercentage(0.05));
        assertThat(between.iMean()).isCloseTo(exact.iMean(), withPercentage(0.1));
        assertThat(between.torsionConstant()).isCloseTo(exact.torsionConstant(), withPercentage(0.1));
        assertThat(between.plasticTorque()).isCloseTo(exact.plasticTorque(), withPercentage(0.1));
        assertThat(between.peakShear()).isCloseTo(exact.peakShear(), withPercentage(3));
        assertThat(between.core()).isCloseTo(exact.core(), withPercentage(0.5));
    }

    /** What keeps a blade of any outlines within a second: fewer of them are worked on between the stations. */
    @Test
    void theMoreCostlyTheOutlinesTheFewerAreWorkedOnBetweenTheStations() {
        assertThat(sections.parts(16, 400)).isEqualTo(16);
        List<SectionStation> jagged = IntStream.range(0, 5)
                .mapToObj(i -> new SectionStation(3 * i, jagged(i)))
                .toList();
        BladeSections costly =
                BladeSections.of(Designs.with(design).sections(jagged).design());
        assertThat(costly.parts(16, 400)).isEqualTo(2);
        assertThat(costly.parts(4, 150)).isEqualTo(1);
        assertThat(costly.outlineAt(4.4).segments()).hasSizeLessThanOrEqualTo(150);
    }

    private static SectionShape jagged(int turned) {
        List<Point> points = IntStream.range(0, 80)
                .mapToObj(i -> Point.polar(i % 2 == 0 ? 1 : 0.9 - 0.01 * turned, 2 * Math.PI * i / 80))
                .toList();
        return new SectionShape("custom", Map.of(), 0, 0, points);
    }

    @Test
    void beforeTheFirstAndAfterTheLastStationNothingChanges() {
        assertThat(sections.at(0)).isEqualTo(sections.at(2));
        assertThat(sections.at(16)).isEqualTo(sections.at(12));
        assertThat(sections.edgesAt(1)).isEqualTo(3);
        assertThat(sections.edgesAt(13)).isEqualTo(4);
    }

    /** {@code tan psi = pi d x turns per mm}, turns per mm = flutes per mm / edges. */
    @Test
    void theHelixAngleFollowsFromFlutesEdgesAndDiameter() {
        double turns = 0.8 / 4;
        assertThat(sections.turnsPerMm(16)).isCloseTo(turns, offset(1e-12));
        assertThat(Math.tan(sections.helixAngle(16))).isCloseTo(Math.PI * 0.89 * turns, offset(1e-12));
    }

    @Test
    void theProfileScalesTheSectionsByTheDiameter() {
        Alloy alloy = Alloys.find("stainless-steel").orElseThrow();
        BladeStiffness stiffness = new BladeStiffness(design, sections, alloy.poisson());
        for (ProfilePoint point : Profiles.of(design, alloy, sections).points()) {
            double level = point.levelMm();
            double d = 0.25 + 0.04 * level;
            assertThat(point.diameterMm()).isCloseTo(d, offset(1e-12));
            assertThat(point.areaMm2()).isCloseTo(sections.at(level).area() * d * d, offset(1e-12));
            double straight = alloy.youngMpa() * sections.at(level).iMean() * Math.pow(d, 4);
            assertThat(point.bendingStiffnessNmm2() / straight)
                    .isCloseTo(stiffness.bendingFactor(level), offset(1e-9))
                    .isBetween(0.5, 1.0);
            assertThat(stiffness.torsionFactor(level)).isGreaterThan(1);
            assertThat(point.chipSpaceMm2() + point.areaMm2()).isCloseTo(Math.PI / 4 * d * d, withPercentage(0.05));
        }
    }
}
