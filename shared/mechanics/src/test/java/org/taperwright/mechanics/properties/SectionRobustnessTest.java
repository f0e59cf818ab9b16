package org.taperwright.mechanics.properties;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;
import org.taperwright.mechanics.work.Fault;

/** Any outline gives numbers or a fault. */
class SectionRobustnessTest {
    @Provide
    Arbitrary<Outline> sections() {
        return SomeSections.ofFamilies();
    }

    @Provide
    Arbitrary<Outline> polygons() {
        return SomeSections.ofPoints();
    }

    @Property(tries = 400)
    void everyFamilysSectionHasNumbers(@ForAll("sections") Outline outline) {
        assertThat(SectionAnalysis.fault(outline)).isEmpty();
        sound(SectionAnalysis.of(outline));
    }

    @Property(tries = 100)
    void anyPolygonAboutTheAxisHasNumbers(@ForAll("polygons") Outline outline) {
        assertThat(SectionAnalysis.fault(outline)).isEmpty();
        sound(SectionAnalysis.of(outline));
    }

    private static void sound(SectionProperties p) {
        DoubleStream.of(
                        p.area(),
                        p.iMax(),
                        p.iMin(),
                        p.polar(),
                        p.torsionConstant(),
                        p.peakShear(),
                        p.plasticTorque(),
                        p.plasticMomentLeast(),
                        p.plasticMomentMost(),
                        p.inscribed(),
                        p.iMean())
                .forEach(value -> assertThat(value).isFinite().isPositive());
        DoubleStream.of(p.centroidX(), p.centroidY(), p.angleOfIMin(), p.core(), p.chipSpace())
                .forEach(value -> assertThat(value).isFinite());
        assertThat(p.torsionConstant()).isLessThan(p.polar() * 1.0001);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.1, 0.03, 0.01, 0.005})
    void aThinStripHasTheTorsionConstantOfTheory(double thickness) {
        SectionProperties strip = SectionAnalysis.of(strip(thickness));
        double length = Math.sqrt(1 - thickness * thickness);
        // J = b t^3 (1/3 - 0.21 t/b (1 - t^4 / 12 b^4)): R. J. Roark, Formulas for Stress and Strain; from memory
        double share = thickness / length;
        double roark = length * Math.pow(thickness, 3) * (1.0 / 3 - 0.21 * share * (1 - Math.pow(share, 4) / 12));
        assertThat(strip.torsionConstant()).isCloseTo(roark, org.assertj.core.data.Percentage.withPercentage(0.3));
    }

    /** Sides bent by 0.00004 d have radii of thousands of d; the polygon of straight sides is their limit. */
    @ParameterizedTest
    @ValueSource(doubles = {9.871752176823336e-4, 3.469984744898707e-4, 4e-5, 1e-6, 1e-8})
    void nearlyStraightSidesGiveNearlyThePlasticNumbersOfStraightOnes(double sagitta) {
        SectionProperties straight = SectionAnalysis.of(triangle(0));
        // equilateral triangle of side a and height h: a^2 h / 12 and a h^2 (2 - sqrt 2) / 6; handbooks, from memory
        double side = Math.sqrt(3) / 2;
        double least = side * side * 0.75 / 12;
        double most = side * 0.75 * 0.75 * (2 - Math.sqrt(2)) / 6;
        for (double by : new double[] {0, 0.01, 1, 2.5}) {
            SectionProperties bent = SectionAnalysis.of(Outlines.turned(triangle(sagitta), by));
            // the heap grows by less than its base times its height over the strip between arc and chord
            assertThat(bent.plasticTorque())
                    .isBetween(
                            straight.plasticTorque() * (1 - 1e-6),
                            straight.plasticTorque() * (1 + 20 * sagitta) + 1e-8);
            assertThat(bent.plasticMomentLeast()).isBetween(least * (1 - 1e-6), least * (1 + 20 * sagitta) + 1e-7);
            assertThat(bent.plasticMomentMost()).isBetween(most * (1 - 1e-6), most * (1 + 20 * sagitta) + 1e-7);
        }
    }

    /** Saint-Venant: of all sections of one area the circle is the stiffest, {@code J <= A^2 / 2 pi} (Polya 1948). */
    @ParameterizedTest
    @CsvSource({"59, 0.022", "114, 0.040", "154, 0.033", "160, 0.045", "202, 0.0018", "234, 0.0017", "352, 0.0081"})
    void aNearlyRoundPolygonOfManyBluntCornersIsNoStifferThanTheCircleOfItsArea(int corners, double depth) {
        for (int lobes = 1; lobes <= 6; lobes++) {
            double[] radii = new double[corners];
            for (int i = 0; i < corners; i++) {
                radii[i] = 1 - depth * Math.pow(Math.sin(Math.PI * lobes * i / corners), 2);
            }
            SectionProperties p = SectionAnalysis.of(SomeSections.polygon(radii));
            double circle = p.area() * p.area() / (2 * Math.PI);
            assertThat(p.torsionConstant()).isBetween(0.99 * circle, circle);
        }
    }

    private static Outline triangle(double sagitta) {
        return ((OutlineResult.Drawn) Sections.outline(SectionShape.of("triangle", Map.of("sagitta", sagitta))))
                .outline();
    }

    @Test
    void aStripThinnerThanTheoryHoldsIsAFaultThatSaysSo() {
        Fault fault = SectionAnalysis.fault(strip(0.003)).orElseThrow();
        assertThat(fault.weight()).isEqualTo(Fault.Weight.IMPOSSIBLE);
        assertThat(fault.sentence()).contains("nowhere thicker than 0.004");
    }

    @Test
    void anOutlineThatRunsClockwiseIsAFaultThatSaysSo() {
        Outline clockwise = polygon(new Point(0.5, 0), new Point(0, -0.5), new Point(-0.5, 0), new Point(0, 0.5));
        assertThat(SectionAnalysis.fault(clockwise).map(Fault::what))
                .isEqualTo(Optional.of("the outline encloses no area or runs clockwise"));
    }

    @Test
    void anOutlineThatCrossesItselfIsAFaultThatSaysSo() {
        Outline bow = polygon(
                new Point(0.5, 0),
                new Point(0.1, 0.4),
                new Point(-0.3, -0.2),
                new Point(-0.3, 0.2),
                new Point(0.1, -0.4));
        assertThat(SectionAnalysis.fault(bow).map(Fault::what))
                .isEqualTo(Optional.of("the outline crosses or touches itself"));
    }

    private static Outline strip(double thickness) {
        double half = thickness / 2;
        double end = Math.sqrt(0.25 - half * half);
        return polygon(new Point(end, -half), new Point(end, half), new Point(-end, half), new Point(-end, -half));
    }

    private static Outline polygon(Point... points) {
        List<Point> corners = List.of(points);
        return new Outline(java.util.stream.IntStream.range(0, points.length)
                .mapToObj(i -> (Segment) new Segment.Line(corners.get(i), corners.get((i + 1) % points.length)))
                .toList());
    }
}
