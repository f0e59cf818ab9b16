package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Custom outlines of any points, good and bad. */
class CustomOutlinePropertiesTest {
    @Property(tries = 200)
    void anyStarShapedPolygonIsDrawnWhateverItsScale(
            @ForAll @IntRange(min = 3, max = 300) int count,
            @ForAll long seed,
            @ForAll @DoubleRange(min = -300, max = 300) double decade) {
        List<Point> points = star(count, seed, 0.3);
        double scale = Math.pow(10, decade);
        Outline outline = Drawn.shape(Drawn.custom(points));
        OutlineSoundness.check(Sections.outline(Drawn.custom(points)));
        Outline scaled = Drawn.shape(
                Drawn.custom(points.stream().map(point -> point.times(scale)).toList()));
        assertThat(scaled.segments()).hasSameSizeAs(outline.segments());
        for (int i = 0; i < outline.segments().size(); i++) {
            assertThat(scaled.segments()
                            .get(i)
                            .start()
                            .distanceTo(outline.segments().get(i).start()))
                    .isLessThan(1e-12);
        }
    }

    @Property(tries = 12)
    void twoThousandPointsAreNoObstacle(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 0.05) double rough) {
        OutlineSoundness.check(Sections.outline(Drawn.custom(star(2000, seed, rough))));
    }

    @Property(tries = 2000)
    void anyPointsAtAllGiveASoundOutlineOrAReason(@ForAll("points") List<Point> points) {
        OutlineSoundness.check(Sections.outline(Drawn.custom(points)));
    }

    @Property(tries = 300)
    void landsAndRoundingOnAnyPolygonGiveASoundOutlineOrAReason(
            @ForAll @IntRange(min = 3, max = 60) int count,
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double land,
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double rounding) {
        List<Point> points = star(count, seed, 0.4);
        OutlineSoundness.check(Sections.outline(new SectionShape("custom", java.util.Map.of(), 0, land, points)));
        OutlineSoundness.check(Sections.outline(new SectionShape("custom", java.util.Map.of(), rounding, 0, points)));
        OutlineSoundness.check(
                Sections.outline(new SectionShape("custom", java.util.Map.of(), rounding, land, points)));
    }

    @Property(tries = 200)
    void theRunOfThePointsDoesNotMatter(@ForAll @IntRange(min = 3, max = 40) int count, @ForAll long seed) {
        List<Point> points = star(count, seed, 0.3);
        List<Point> reversed = new ArrayList<>(points);
        Collections.reverse(reversed);
        assertThat(Drawn.shape(Drawn.custom(reversed))).isEqualTo(Drawn.shape(Drawn.custom(points)));
        assertThat(Drawn.remarks(Drawn.custom(reversed)))
                .anyMatch(fault -> fault.what().equals("the points run clockwise"));
    }

    private static List<Point> star(int count, long seed, double rough) {
        Random random = new Random(seed);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(Point.polar(
                    0.5 - rough * random.nextDouble(), (i + 0.3 * random.nextDouble()) * 2 * Math.PI / count));
        }
        return points;
    }

    @Provide
    Arbitrary<List<Point>> points() {
        Arbitrary<Double> coordinate = Arbitraries.oneOf(
                Arbitraries.integers().between(-3, 3).map(Integer::doubleValue),
                Arbitraries.doubles().between(-1, 1),
                Arbitraries.of(1e-12, -1e-12, 1e300, Double.MIN_VALUE, Double.NaN, Double.POSITIVE_INFINITY));
        return net.jqwik.api.Combinators.combine(coordinate, coordinate)
                .as(Point::new)
                .list()
                .ofMaxSize(12);
    }
}
