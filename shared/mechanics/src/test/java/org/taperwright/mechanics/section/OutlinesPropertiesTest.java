package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Measures of exact outlines against the same measures of a fine polygon, and under moves about the axis. */
class OutlinesPropertiesTest {
    private static final double FINE = 1e-6;

    @Property
    void aPointIsInsideJustWhenItIsInsideTheFinePolygon(
            @ForAll("outlines") Outline outline,
            @ForAll @DoubleRange(min = -0.55, max = 0.55) double x,
            @ForAll @DoubleRange(min = -0.55, max = 0.55) double y) {
        Point point = new Point(x, y);
        if (Outlines.distance(outline, point) > 2 * FINE) {
            assertThat(Outlines.contains(outline, point))
                    .isEqualTo(windsAround(Outlines.flattened(outline, FINE), point));
        }
    }

    /** Sum of the angles under which the sides are seen: a whole turn inside, none outside. */
    private static boolean windsAround(List<Point> polygon, Point point) {
        double sum = 0;
        for (int i = 0; i < polygon.size(); i++) {
            Point a = polygon.get(i).minus(point);
            Point b = polygon.get((i + 1) % polygon.size()).minus(point);
            sum += Math.atan2(a.cross(b), a.dot(b));
        }
        return Math.abs(sum) > Math.PI;
    }

    @Property
    void chordsStayWithinTheToleranceAndTheAreaFollows(@ForAll("outlines") Outline outline) {
        List<Point> polygon = Outlines.flattened(outline, 1e-4);
        double twice = 0;
        for (int i = 0; i < polygon.size(); i++) {
            Point next = polygon.get((i + 1) % polygon.size());
            twice += polygon.get(i).cross(next);
            Point middle = polygon.get(i).plus(next).times(0.5);
            assertThat(Outlines.distance(outline, middle)).isLessThan(1.0001e-4);
        }
        assertThat(twice / 2).isCloseTo(Outlines.area(outline.segments()), within(1e-4 * Outlines.perimeter(outline)));
    }

    @Property
    void turningAndMirroringChangeNoMeasure(
            @ForAll("outlines") Outline outline, @ForAll @DoubleRange(min = -7, max = 7) double angle) {
        for (Outline moved : List.of(Outlines.turned(outline, angle), Outlines.mirrored(outline))) {
            assertThat(Outlines.area(moved.segments())).isCloseTo(Outlines.area(outline.segments()), within(1e-12));
            assertThat(Outlines.perimeter(moved)).isCloseTo(Outlines.perimeter(outline), within(1e-12));
            assertThat(Outlines.coreRadius(moved)).isCloseTo(Outlines.coreRadius(outline), within(1e-12));
            assertThat(Outlines.circumscribedRadius(moved.segments())).isCloseTo(0.5, within(1e-12));
        }
    }

    @Property
    void theRayEndsOnTheOutline(
            @ForAll("outlines") Outline outline, @ForAll @DoubleRange(min = -7, max = 7) double angle) {
        double radius = Outlines.radiusAt(outline, angle);
        assertThat(radius).isBetween(Outlines.coreRadius(outline) - 1e-9, 0.5 + 1e-9);
        assertThat(Outlines.distance(outline, Point.polar(radius, angle))).isLessThan(1e-9);
    }

    @Provide
    Arbitrary<Outline> outlines() {
        return Arbitraries.of(
                Drawn.family("triangle"),
                Drawn.family("triangle", Map.of("sagitta", -0.07)),
                Drawn.family("square", Map.of("sagitta", 0.06)),
                Drawn.family("rhombus"),
                Drawn.family("teardrop"),
                Drawn.family("scalloped"),
                Drawn.family("scalloped", Map.of("flutes", 2.0, "coreDiameter", 0.3, "landAngleDeg", 60.0)),
                Drawn.family("double-s", Map.of("outwardSagitta", 0.12, "inwardSagitta", 0.12)),
                Drawn.family("offset-rectangle"),
                Drawn.shape(new SectionShape("triangle", Map.of(), 0.02, 0.08, List.of())));
    }
}
