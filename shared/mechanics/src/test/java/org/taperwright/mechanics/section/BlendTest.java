package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BlendTest {
    private static final Outline TRIANGLE = Drawn.family("triangle");
    private static final Outline CONVEX = Drawn.family("triangle", Map.of("sagitta", 0.1));
    private static final Outline SQUARE = Drawn.family("square");

    @Test
    void theEndsOfABlendAreTheOutlinesThemselves() {
        assertThat(Sections.blend(TRIANGLE, SQUARE, 0)).isEqualTo(TRIANGLE);
        assertThat(Sections.blend(TRIANGLE, SQUARE, 1)).isEqualTo(SQUARE);
        assertThat(Sections.blend(SQUARE, SQUARE, 0.3)).isEqualTo(SQUARE);
    }

    @Property(tries = 200)
    void distancesFromTheAxisAreMixedAtEqualAngle(
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share,
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double angle) {
        double expected = (1 - share) * Outlines.radiusAt(TRIANGLE, angle) + share * Outlines.radiusAt(CONVEX, angle);
        Outline blend = Sections.blend(TRIANGLE, CONVEX, share);
        assertThat(Outlines.radiusAt(blend, angle)).isCloseTo(expected, within(3e-5));
    }

    @Test
    void aBlendOfTwoThatShareTheirCornersKeepsThem() {
        Outline blend = Sections.blend(TRIANGLE, CONVEX, 0.5);
        assertThat(Sections.edges(blend, Hand.CLOCKWISE)).hasSize(3).allSatisfy(edge -> {
            assertThat(edge.rakeDeg()).isBetween(-60.0, -30.0);
            assertThat(edge.at().radius()).isCloseTo(0.5, within(1e-12));
        });
        assertThat(blend.segments()).hasSizeLessThan(50);
    }

    @Property(tries = 200)
    void everyBlendIsSound(@ForAll @DoubleRange(min = 0, max = 1) double share) {
        List<Outline> outlines = List.of(
                TRIANGLE,
                SQUARE,
                Drawn.family("teardrop"),
                Drawn.family("scalloped"),
                Drawn.family("double-s"),
                Drawn.family("offset-rectangle"),
                hooked());
        for (Outline a : outlines) {
            for (Outline b : outlines) {
                OutlineSoundness.check(new OutlineResult.Drawn(Sections.blend(a, b, share), List.of()));
            }
        }
    }

    @Test
    void anOutlineWithOverhangingFacesIsBlendedAtEqualArcLength() {
        Outline hooked = hooked();
        assertThat(Rays.starShaped(hooked.segments())).isFalse();
        Outline blend = Sections.blend(hooked, Outlines.turned(hooked, 0.02), 0.5);
        assertThat(Rays.starShaped(blend.segments())).isFalse();
        assertThat(Outlines.area(blend.segments())).isCloseTo(Outlines.area(hooked.segments()), within(2e-3));
    }

    /** Two hooks whose leading faces stand under the edge. */
    private static Outline hooked() {
        return Drawn.shape(Drawn.custom(
                0.95, -0.2, 1, 0.0, 0.6, 0.4, 0.2, 0.5, -0.5, 0.35, -0.55, 0.1, -0.95, 0.2, -1, 0.0, -0.6, -0.4, -0.2,
                -0.5, 0.5, -0.35, 0.55, -0.1));
    }
}
