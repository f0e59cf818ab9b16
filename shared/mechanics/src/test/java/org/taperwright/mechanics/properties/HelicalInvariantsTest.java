package org.taperwright.mechanics.properties;

import static org.assertj.core.api.Assertions.assertThat;
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
        HelicalAnalysis analysis = HelicalAnalysis.of(circle, poisson);
        for (double t = 0; t <= 4; t += 0.25) {
            HelicalFactors factors = analysis.at(t);
            assertThat(factors.bending()).isCloseTo(1, offset(2e-4));
            assertThat(factors.torsion()).isCloseTo(1, offset(2e-4));
            assertThat(factors.torsionHeld()).isCloseTo(1, offset(2e-4));
            assertThat(factors.extension()).isCloseTo(1, offset(2e-4));
            assertThat(factors.coupling()).isCloseTo(0, offset(2e-5));
            assertThat(analysis.peakStressAt(t).bending()).isCloseTo(1, offset(5e-3));
            assertThat(analysis.peakStressAt(t).torsion()).isCloseTo(1, offset(5e-3));
        }
    }

    @Property(tries = 40)
    void aBarWithoutTwistIsStraight(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(min = 0.2, max = 0.45) double poisson) {
        HelicalFactors none = HelicalAnalysis.of(outline, poisson).at(0);
        assertThat(none.bending()).isCloseTo(1, offset(1e-9));
        assertThat(none.torsion()).isCloseTo(1, offset(1e-9));
        assertThat(none.coupling()).isCloseTo(0, offset(1e-9));
    }

    @Property(tries = 40)
    void turningAndMirroringASectionChangeNothing(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(max = 2) double t) {
        HelicalFactors given = HelicalAnalysis.of(outline, 0.3).at(t);
        for (Outline same : List.of(Outlines.turned(outline, 1 + t), Outlines.mirrored(outline))) {
            HelicalFactors other = HelicalAnalysis.of(same, 0.3).at(t);
            assertThat(other.bending()).isCloseTo(given.bending(), MESH);
            assertThat(other.torsion()).isCloseTo(given.torsion(), MESH);
            assertThat(other.extension()).isCloseTo(given.extension(), MESH);
        }
    }

    @Property(tries = 60)
    void freeingWhatWasHeldMakesABarSofter(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(min = 0.1, max = 4) double t) {
        HelicalFactors factors = HelicalAnalysis.of(outline, 0.3).at(t);
        assertThat(factors.torsion()).isLessThanOrEqualTo(factors.torsionHeld() * (1 + 1e-9));
        assertThat(factors.extension()).isLessThanOrEqualTo(1 + 1e-6);
        assertThat(factors.bending()).isLessThanOrEqualTo(1 + 1e-3);
    }

    @Test
    void aLeftHandedBarIsTheMirrorImageOfARightHandedOne() {
        HelicalAnalysis square = HelicalAnalysis.of(SomeSections.polygon(0.5, 0.5, 0.5, 0.5), 0.3);
        assertThat(square.at(-1.3).bending()).isEqualTo(square.at(1.3).bending());
        assertThat(square.at(-1.3).torsion()).isEqualTo(square.at(1.3).torsion());
        assertThat(square.at(-1.3).coupling()).isEqualTo(-square.at(1.3).coupling());
        assertThat(square.at(1.3).coupling()).isPositive();
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
        HelicalAnalysis analysis = HelicalAnalysis.of(outline, 0.33);
        for (double t : new double[] {0, 0.7, 2, 4, 5, 9}) {
            HelicalFactors factors = analysis.at(t);
            PeakStressFactors peak = analysis.peakStressAt(t);
            DoubleStream.of(
                            factors.bending(),
                            factors.torsion(),
                            factors.torsionHeld(),
                            factors.extension(),
                            peak.bendingAxial(),
                            peak.bending(),
                            peak.torsion())
                    .forEach(value -> assertThat(value).isFinite().isPositive());
            assertThat(factors.coupling()).isFinite();
        }
    }
}
