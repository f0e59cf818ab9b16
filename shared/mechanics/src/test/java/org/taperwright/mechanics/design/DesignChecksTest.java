package org.taperwright.mechanics.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.work.Fault;

class DesignChecksTest {
    private static final Design FILE = Designs.standard(25, 0.02);
    private static final Design ROTARY = Designs.standard(25, 0.06);

    private static List<String> sentences(Design design) {
        return DesignChecks.check(design).stream().map(Fault::sentence).toList();
    }

    private static void impossible(Design design, String where, String what) {
        assertThat(DesignChecks.check(design)).anySatisfy(fault -> {
            assertThat(fault.weight()).isEqualTo(Fault.Weight.IMPOSSIBLE);
            assertThat(fault.where()).isEqualTo(where);
            assertThat(fault.what()).isEqualTo(what);
            assertThat(fault.expected()).isNotBlank();
        });
    }

    private static void unusual(Design design, String where, String what) {
        assertThat(DesignChecks.check(design)).singleElement().satisfies(fault -> {
            assertThat(fault.weight()).isEqualTo(Fault.Weight.UNUSUAL);
            assertThat(fault.where()).isEqualTo(where);
            assertThat(fault.what()).isEqualTo(what);
            assertThat(fault.expected()).isNotBlank();
        });
    }

    private static DesignDraft file() {
        return Designs.with(FILE);
    }

    private static DesignDraft rotary() {
        return Designs.with(ROTARY);
    }

    @Test
    void theStandardsSeriesHasNothingToSay() {
        for (int size : IsoSizes.sizes()) {
            assertThat(sentences(Designs.standard(size, 0.02)))
                    .as("size %d", size)
                    .isEmpty();
        }
        assertThat(sentences(Designs.standard(30, 0.04))).isEmpty();
    }

    @Test
    void aDiameterAtTheTipOutsideWhatCanBeMadeIsImpossible() {
        impossible(file().tipDiameterMm(0.05).design(), "tipDiameterMm", "the diameter at the tip is 0.05 mm");
        impossible(file().tipDiameterMm(2.4).design(), "tipDiameterMm", "the diameter at the tip is 2.40 mm");
        impossible(
                file().tipDiameterMm(Double.NaN).design(),
                "tipDiameterMm",
                "the diameter at the tip is not a number mm");
    }

    @Test
    void aSizeBetweenTheStandardsIsUnusual() {
        unusual(
                file().tipDiameterMm(0.27).design(),
                "tipDiameterMm",
                "0.27 mm at the tip is no size of the standard's series");
    }

    @Test
    void taperSegmentsMustFollowOnFromTheTip() {
        impossible(file().taper(List.of()).design(), "taper", "there is no taper segment");
        impossible(
                file().taper(List.of(new TaperSegment(1, 16, 0.02))).design(),
                "taper[0].fromMm",
                "the segment begins at 1 mm");
        impossible(
                file().taper(List.of(new TaperSegment(0, 8, 0.02), new TaperSegment(9, 16, 0.02)))
                        .design(),
                "taper[1].fromMm",
                "the segment begins at 9 mm");
        impossible(
                file().taper(List.of(new TaperSegment(0, 0, 0.02))).design(),
                "taper[0].toMm",
                "the segment ends at 0 mm");
    }

    @Test
    void noMoreSectionsSegmentsAndStationsAreTakenThanCanBeWorkedOnInASecond() {
        List<SectionStation> sections = IntStream.range(0, 6)
                .mapToObj(i -> new SectionStation(i, SectionShape.of("square", Map.of())))
                .toList();
        impossible(file().sections(sections).design(), "sections", "there are 6 section stations");
        List<FluteStation> flutes = IntStream.range(0, 101)
                .mapToObj(i -> new FluteStation(i / 10.0, 1))
                .toList();
        impossible(file().flutes(flutes).design(), "flutes", "there are 101 flute stations");
        List<TaperSegment> taper = IntStream.range(0, 101)
                .mapToObj(i -> new TaperSegment(i / 10.0, (i + 1) / 10.0, 0.02))
                .toList();
        impossible(file().taper(taper).design(), "taper", "there are 101 taper segments");
    }

    @Test
    void aTaperThatIsNoNumberIsImpossible() {
        impossible(file().constantTaper(Double.NaN).design(), "taper[0].taper", "the taper is not a number mm/mm");
        impossible(file().constantTaper(0.7).design(), "taper[0].taper", "the taper is 0.7 mm/mm");
    }

    @Test
    void aTaperThatThinsTheBladeAwayIsImpossible() {
        impossible(file().constantTaper(-0.02).design(), "taper[0].taper", "the diameter comes to -0.07 mm at 16 mm");
    }

    @Test
    void aTaperBeyondTheThickestBlankIsImpossible() {
        impossible(file().constantTaper(0.15).design(), "taper[0].taper", "the diameter comes to 2.65 mm at 16 mm");
    }

    @Test
    void aNegativeOrSteepTaperIsUnusual() {
        unusual(
                file().tipDiameterMm(0.6)
                        .taper(List.of(new TaperSegment(0, 8, 0.02), new TaperSegment(8, 16, -0.02)))
                        .design(),
                "taper[1].taper",
                "the taper is negative: the blade thins towards the handle");
        unusual(rotary().constantTaper(0.125).flutesPerMm(0.3).design(), "taper[0].taper", "the taper is .125");
    }

    @Test
    void aShaftThinnerThanTheBladeIsUnusualAndOneBeyondTheBlankImpossible() {
        unusual(
                rotary().shaftDiameterMm(OptionalDouble.of(1)).design(),
                "shaftDiameterMm",
                "the taper brings the blade to 1.21 mm, thicker than the shaft of 1.00 mm");
        impossible(rotary().shaftDiameterMm(OptionalDouble.of(3)).design(), "shaftDiameterMm", "the shaft is 3.00 mm");
    }

    @Test
    void anInstrumentShorterThanItsWorkingPartIsImpossible() {
        impossible(
                file().lengthMm(15).design(),
                "lengthMm",
                "the working part of 16 mm is longer than the instrument of 15 mm");
        impossible(file().lengthMm(0).design(), "lengthMm", "the length is 0 mm");
    }

    @Test
    void aLengthThatTheStandardDoesNotHaveIsUnusual() {
        unusual(file().lengthMm(23).design(), "lengthMm", "the length is 23 mm");
    }

    @Test
    void aShortWorkingPartIsUnusual() {
        unusual(
                file().taper(List.of(new TaperSegment(0, 12, 0.02))).design(),
                "taper[0].toMm",
                "the working part is 12 mm");
    }

    @Test
    void theTipsAngleHasItsLimits() {
        impossible(file().tip(new Tip(TipKind.PASSIVE, 0)).design(), "tip.angleDeg", "the tip's angle is 0°");
        unusual(file().tip(new Tip(TipKind.PASSIVE, 40)).design(), "tip.angleDeg", "the tip's angle is 40°");
    }

    @Test
    void aLargeCuttingTipIsUnusual() {
        unusual(
                Designs.with(Designs.standard(60, 0.02))
                        .tip(new Tip(TipKind.ACTIVE, 75))
                        .design(),
                "tip.kind",
                "a tip of 0.60 mm cuts ahead");
    }

    @Test
    void sectionsNeedAtLeastOneStationAndRisingLevels() {
        impossible(file().sections(List.of()).design(), "sections", "there is no section");
        SectionShape square = SectionShape.of("square", Map.of());
        impossible(
                file().sections(List.of(new SectionStation(4, square), new SectionStation(4, square)))
                        .design(),
                "sections[1].levelMm",
                "the station stands at 4 mm");
        impossible(
                file().sections(List.of(new SectionStation(-1, square))).design(),
                "sections[0].levelMm",
                "the station stands at -1 mm");
    }

    @Test
    void faultsOfAShapeNameTheFieldWithinTheDesign() {
        impossible(
                file().section(SectionShape.of("hexagon", Map.of())).design(),
                "sections[0].shape.family",
                "no family of sections is called \"hexagon\"");
        impossible(
                file().section(SectionShape.of("square", Map.of("sagitta", 0.5)))
                        .design(),
                "sections[0].shape.parameters.sagitta",
                "Bow of the sides is 0.5");
        impossible(
                file().section(SectionShape.of("square", Map.of("bow", 0.5))).design(),
                "sections[0].shape.parameters.bow",
                "the family \"square\" has no parameter \"bow\"");
        impossible(
                file().section(new SectionShape("custom", Map.of(), 0, 0, List.of(new Point(1, 1))))
                        .design(),
                "sections[0].shape.points",
                "1 different points");
    }

    @Test
    void aWedgeThatWouldChipIsUnusual() {
        assertThat(sentences(file().section(SectionShape.of("triangle", Map.of("sagitta", -0.09)))
                        .design()))
                .anyMatch(sentence -> sentence.startsWith("sections[0].shape: an edge has a wedge of only"))
                .anyMatch(sentence -> sentence.contains("chips or rolls over (common practice, no source)"));
    }

    @Test
    void aThinCoreIsUnusual() {
        unusual(
                rotary().section(SectionShape.of("scalloped", Map.of("coreDiameter", 0.25)))
                        .design(),
                "sections[0].shape",
                "the core is 25 % of the diameter");
    }

    @Test
    void aBladeWithoutEdgesIsUnusual() {
        List<Point> round = new java.util.ArrayList<>();
        for (int i = 0; i < 90; i++) {
            round.add(Point.polar(1, Math.toRadians(4 * i)));
        }
        unusual(
                rotary().flutesPerMm(0.2)
                        .section(new SectionShape("custom", Map.of(), 0, 0, round))
                        .design(),
                "sections[0].shape",
                "the section has no cutting edge");
    }

    @Test
    void edgesThatComeOrGoAlongTheBladeAreUnusual() {
        unusual(
                rotary().sections(List.of(
                                new SectionStation(0, SectionShape.of("triangle", Map.of())),
                                new SectionStation(8, SectionShape.of("square", Map.of()))))
                        .design(),
                "sections[1].shape",
                "4 edges follow on 3");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 50, Double.NaN, Double.POSITIVE_INFINITY})
    void flutesPerMmHaveTheirLimits(double flutes) {
        assertThat(DesignChecks.check(file().flutesPerMm(flutes).design()))
                .anyMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE
                        && fault.where().equals("flutes[0].flutesPerMm"));
    }

    @Test
    void flutesNeedAtLeastOneStation() {
        impossible(file().flutes(List.of()).design(), "flutes", "there is no flute station");
    }

    @Test
    void straightAndVerySteepFlutesAreUnusual() {
        unusual(file().flutesPerMm(0).design(), "flutes[0].flutesPerMm", "the flutes do not wind");
        // atan(pi 0.25 14/4) = 70.0°
        unusual(
                file().flutesPerMm(14.1).design(),
                "flutes[0].flutesPerMm",
                "the helix angle comes to 70.1° from the axis");
    }

    @Test
    void anUnknownAlloyIsImpossible() {
        impossible(file().alloy("brass").design(), "alloy", "no alloy is called \"brass\"");
    }

    @Test
    void aTwistedSuperelasticBlankIsUnusual() {
        unusual(
                rotary().making(Making.TWISTED).design(),
                "making",
                "a blank of Superelastic NiTi (austenitic) is twisted");
    }

    @Test
    void aTwistedSectionThatNoBarHasIsUnusual() {
        unusual(
                file().making(Making.TWISTED)
                        .section(SectionShape.of("teardrop", Map.of()))
                        .design(),
                "making",
                "a blade with the section \"teardrop\" at station 0 is twisted");
    }

    @Test
    void steelThatTurnsContinuouslyIsUnusual() {
        unusual(file().motion(Motion.ROTATION).design(), "motion", "Stainless steel is turned continuously");
    }

    @ParameterizedTest
    @CsvSource({"25, 0.02, 25/.02", "8, 0.02, 08/.02", "40, 0.04, 40/.04"})
    void quickEntryNamesTheDesignBySizeAndTaper(int size, double taper, String name) {
        Design design = Designs.standard(size, taper);
        assertThat(design.name()).isEqualTo(name);
        assertThat(design.diameterMm(16))
                .isCloseTo(size / 100.0 + 16 * taper, org.assertj.core.api.Assertions.within(1e-12));
    }
}
