package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

/** What every drawn outline must be, checked on a fine polygon by a plain method of its own. */
final class OutlineSoundness {
    private OutlineSoundness() {}

    static void check(OutlineResult result) {
        if (result instanceof OutlineResult.Refused refused) {
            assertThat(refused.faults())
                    .isNotEmpty()
                    .allSatisfy(
                            fault -> assertThat(fault.sentence()).isNotBlank().doesNotContain("NaN"));
            return;
        }
        Outline outline = ((OutlineResult.Drawn) result).outline();
        closed(outline.segments());
        List<Point> polygon = Outlines.flattened(outline, 1e-4);
        simple(polygon);
        assertThat(shoelace(polygon)).as("anticlockwise").isPositive();
        assertThat(polygon.stream().mapToDouble(Point::radius).max().orElseThrow())
                .as("circumscribed radius")
                .isCloseTo(0.5, within(2e-4))
                .isLessThan(0.5 + 1e-9);
        assertThat(Outlines.circumscribedRadius(outline.segments())).isCloseTo(0.5, within(1e-12));
        edges(outline);
    }

    static void edges(Outline outline) {
        for (Hand hand : Hand.values()) {
            for (Edge edge : Sections.edges(outline, hand)) {
                assertThat(edge.rakeDeg() + edge.wedgeDeg() + edge.clearanceDeg())
                        .as("%s", edge)
                        .isCloseTo(90, within(1e-9));
                assertThat(edge.at().radius()).isBetween(0.48 - 1e-9, 0.5 + 1e-9);
                assertThat(edge.landWidth()).isBetween(0.0, Math.PI);
            }
        }
    }

    private static void closed(List<Segment> segments) {
        for (int i = 0; i < segments.size(); i++) {
            Point end = segments.get(i).end();
            Point next = segments.get((i + 1) % segments.size()).start();
            assertThat(end.distanceTo(next)).as("joint %d", i).isLessThan(1e-9);
            assertThat(segments.get(i).length()).as("length %d", i).isPositive().isFinite();
        }
    }

    private static double shoelace(List<Point> polygon) {
        double twice = 0;
        for (int i = 0; i < polygon.size(); i++) {
            twice += polygon.get(i).cross(polygon.get((i + 1) % polygon.size()));
        }
        return twice / 2;
    }

    private static void simple(List<Point> polygon) {
        int n = polygon.size();
        for (int i = 0; i < n; i++) {
            for (int k = i + 2; k < n; k++) {
                if (i == 0 && k == n - 1) {
                    continue;
                }
                boolean cross = crosses(polygon.get(i), polygon.get(i + 1), polygon.get(k), polygon.get((k + 1) % n));
                if (cross) {
                    assertThat(cross).as("sides %d and %d cross", i, k).isFalse();
                }
            }
        }
    }

    private static boolean crosses(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point c) {
        return Math.signum(b.minus(a).cross(c.minus(a)));
    }
}
