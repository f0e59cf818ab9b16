package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.work.Fault;

/** Shapes drawn for tests. */
final class Drawn {
    private Drawn() {}

    static Outline family(String id, Map<String, Double> parameters) {
        return shape(SectionShape.of(id, parameters));
    }

    static Outline family(String id) {
        return family(id, Map.of());
    }

    static SectionShape withLand(String id, double landWidth) {
        return new SectionShape(id, Map.of(), 0, landWidth, List.of());
    }

    static SectionShape withRounding(String id, double radius) {
        return new SectionShape(id, Map.of(), radius, 0, List.of());
    }

    static SectionShape custom(List<Point> points) {
        return new SectionShape("custom", Map.of(), 0, 0, points);
    }

    static SectionShape custom(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return custom(points);
    }

    static Outline shape(SectionShape shape) {
        OutlineResult result = Sections.outline(shape);
        assertThat(result).as("%s", shape).isInstanceOf(OutlineResult.Drawn.class);
        return ((OutlineResult.Drawn) result).outline();
    }

    static List<Fault> remarks(SectionShape shape) {
        return ((OutlineResult.Drawn) Sections.outline(shape)).remarks();
    }

    static List<Fault> faults(SectionShape shape) {
        OutlineResult result = Sections.outline(shape);
        assertThat(result).as("%s", shape).isInstanceOf(OutlineResult.Refused.class);
        return ((OutlineResult.Refused) result).faults();
    }
}
