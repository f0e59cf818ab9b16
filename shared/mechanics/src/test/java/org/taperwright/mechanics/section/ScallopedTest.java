package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.section.families.Scalloped;

class ScallopedTest {
    private static SectionShape shape(double flutes, double core, double land) {
        return SectionShape.of("scalloped", Map.of("flutes", flutes, "coreDiameter", core, "landAngleDeg", land));
    }

    private static void refused(SectionShape shape, String sentence) {
        assertThat(Drawn.faults(shape))
                .singleElement()
                .satisfies(fault -> assertThat(fault.sentence()).isEqualTo(sentence));
    }

    @Test
    void theCuttingCirclesGiveCoreAndLand() {
        // the reference's three-flute section states both forms
        SectionShape shape = Scalloped.byCircles(3, 0.627959616989, 0.807959616989);
        assertThat(shape.parameters().get("coreDiameter")).isCloseTo(0.36, within(1e-11));
        assertThat(shape.parameters().get("landAngleDeg")).isCloseTo(18, within(1e-9));
    }

    @Test
    void cutsThatMissTheCircleGiveNoNumberButAFault() {
        assertThat(Sections.outline(Scalloped.byCircles(3, 0.1, 5))).isInstanceOf(OutlineResult.Refused.class);
    }

    @Test
    void withoutLandsTheFlutesMeetInCusps() {
        Outline outline = Drawn.shape(shape(3, 0.36, 0));
        assertThat(outline.segments()).hasSize(3);
        assertThat(Sections.edges(outline, Hand.CLOCKWISE))
                .hasSize(3)
                .allSatisfy(edge -> assertThat(edge.landWidth()).isZero());
    }

    @Test
    void oneFluteLeavesOneLand() {
        Outline outline = Drawn.shape(shape(1, 0.3, 240));
        assertThat(Sections.edges(outline, Hand.CLOCKWISE))
                .singleElement()
                .satisfies(edge -> assertThat(edge.landWidth()).isCloseTo(0.5 * Math.toRadians(240), within(1e-9)));
    }

    @Test
    void landsThatFillTheCircleAreRefused() {
        refused(
                shape(8, 0.3, 45),
                "parameters.landAngleDeg: the lands leave no room for 8 flutes; a land angle of at most 41°");
    }

    @Test
    void aCoreBeyondTheChordBetweenLandsIsRefused() {
        refused(
                shape(3, 0.7, 18),
                "parameters.coreDiameter: the core leaves no hollow flute between the lands; a smaller core or wider lands,"
                        + " so that the core is below 0.629");
    }

    @Test
    void flutesTooShallowToCutAreRefused() {
        refused(
                shape(8, 0.945, 10),
                "parameters.coreDiameter: the flutes are too shallow to leave a cutting edge; a smaller core or narrower"
                        + " lands");
    }

    @Test
    void flutesThatRunIntoEachOtherAreRefused() {
        refused(
                shape(3, 0.1, 6),
                "parameters.coreDiameter: neighbouring flutes run into each other; a larger core, wider lands or fewer"
                        + " flutes");
    }

    @Test
    void flutesComeInWholeNumbers() {
        refused(shape(2.5, 0.3, 18), "parameters.flutes: Flutes is 2.5; a whole number from 1 to 8");
    }
}
