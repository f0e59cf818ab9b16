package org.taperwright.mechanics.properties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.properties.helix.PeakStressFactors;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/** What must hold for any twisted bar. */
class HelicalInvariantsTest {
    /** Two coarse meshes of one section up to a twist of 2. */
    private static final Percentage MESH = withPercentage(0.6);

    @Provide
    Arbitrary<Outline> sections() {
        return SomeSections.ofFamilies();
    }

    @Provide
    Arbitrary<Outline> polygons() {
        return SomeSections.ofPoints();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.33, 0.45})
    void aRoundBarCannotTellThatItIsTwisted(double poisson) {
        Outline circle = new Outline(List.of(
                new Segment.Arc(Point.AXIS, 0.5, 0, Math.PI), new Segment.Arc(Point.AXIS, 0.5, Math.PI, 2 * Math.PI)));
        HelicalFactors factors = HelicalAnalysis.of(circle, poisson);
        for (double t = 0; t <= 4; t += 0.25) {
            assertThat(factors.bending(t)).isCloseTo(1, offset(2e-4));
            assertThat(factors.torsion(t)).isCloseTo(1, offset(2e-4));
            assertThat(factors.torsionHeld(t)).isCloseTo(1, offset(2e-4));
            assertThat(factors.extension(t)).isCloseTo(1, offset(2e-4));
            assertThat(factors.coupling(t)).isCloseTo(0, offset(2e-5));
            assertThat(factors.peakStress(t).bending()).isCloseTo(1, offset(5e-3));
            assertThat(factors.peakStress(t).torsion()).isCloseTo(1, offset(5e-3));
        }
    }

    @Property(tries = 40)
    void aBarWithoutTwistIsStraight(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(min = 0.2, max = 0.45) double poisson) {
        HelicalFactors factors = HelicalAnalysis.of(outline, poisson);
        assertThat(factors.bending(0)).isCloseTo(1, offset(1e-9));
        assertThat(factors.torsion(0)).isCloseTo(1, offset(1e-9));
        assertThat(factors.coupling(0)).isCloseTo(0, offset(1e-9));
        assertThat(factors.peakStress(0)).isEqualTo(PeakStressFactors.STRAIGHT);
    }

    @Property(tries = 40)
    void turningAndMirroringASectionChangeNothing(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(max = 2) double t) {
        HelicalFactors given = HelicalAnalysis.of(outline, 0.3);
        for (Outline same : List.of(Outlines.turned(outline, 1 + t), Outlines.mirrored(outline))) {
            HelicalFactors other = HelicalAnalysis.of(same, 0.3);
            assertThat(other.bending(t)).isCloseTo(given.bending(t), MESH);
            assertThat(other.torsion(t)).isCloseTo(given.torsion(t), MESH);
            assertThat(other.extension(t)).isCloseTo(given.extension(t), MESH);
        }
    }

    @Property(tries = 60)
    void freeingWhatWasHeldMakesABarSofter(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(min = 0.1, max = 4) double t) {
        HelicalFactors factors = HelicalAnalysis.of(outline, 0.3);
        assertThat(factors.torsion(t)).isLessThanOrEqualTo(factors.torsionHeld(t) * (1 + 1e-9));
        assertThat(factors.extension(t)).isLessThanOrEqualTo(1 + 1e-6);
        assertThat(factors.bending(t)).isLessThanOrEqualTo(1 + 1e-3);
    }

    @Test
    void aLeftHandedBarIsTheMirrorImageOfARightHandedOne() {
        HelicalFactors square = HelicalAnalysis.of(SomeSections.polygon(0.5, 0.5, 0.5, 0.5), 0.3);
        assertThat(square.bending(-1.3)).isEqualTo(square.bending(1.3));
        assertThat(square.torsion(-1.3)).isEqualTo(square.torsion(1.3));
        assertThat(square.coupling(-1.3)).isEqualTo(-square.coupling(1.3));
        assertThat(square.coupling(1.3)).isPositive();
    }

    @Test
    void beyondTheRangeTheLastValueStands() {
        HelicalFactors square = HelicalAnalysis.of(SomeSections.polygon(0.5, 0.5, 0.5, 0.5), 0.3);
        assertThat(HelicalFactors.covers(4)).isTrue();
        assertThat(HelicalFactors.covers(4.1)).isFalse();
        assertThat(square.bending(9)).isEqualTo(square.bending(4));
        assertThat(square.peakStress(9)).isEqualTo(square.peakStress(4));
    }

    @Test
    void anImpossiblePoissonsRatioIsRefused() {
        assertThatThrownBy(() -> HelicalAnalysis.of(SomeSections.polygon(0.5, 0.5, 0.5, 0.5), 0.5))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 60)
    void anySectionHasFiniteFactors(@ForAll("sections") Outline outline) {
        sound(outline);
    }

    @Property(tries = 25)
    void anyPolygonHasFiniteFactors(@ForAll("polygons") Outline outline) {
        sound(outline);
    }

    private static void sound(Outline outline) {
        HelicalFactors factors = HelicalAnalysis.of(outline, 0.33);
        for (double t : new double[] {0, 0.7, 2, 4, 5, 9}) {
            PeakStressFactors peak = factors.peakStress(t);
            DoubleStream.of(
                            factors.bending(t),
                            factors.torsion(t),
                            factors.torsionHeld(t),
                            factors.extension(t),
                            peak.bendingAxial(),
                            peak.bending(),
                            peak.torsion())
                    .forEach(value -> assertThat(value).isFinite().isPositive());
            assertThat(factors.coupling(t)).isFinite();
        }
    }
}
