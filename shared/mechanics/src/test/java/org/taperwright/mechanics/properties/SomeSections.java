package org.taperwright.mechanics.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/** Outlines to try properties on. */
final class SomeSections {
    private SomeSections() {}

    /** Shapes of every family over its whole parameter space, now and then rounded or with lands. */
    static Arbitrary<Outline> ofFamilies() {
        return Arbitraries.randomValue(SomeSections::shape)
                .map(Sections::outline)
                .filter(OutlineResult.Drawn.class::isInstance)
                .map(result -> ((OutlineResult.Drawn) result).outline());
    }

    private static SectionShape shape(Random random) {
        List<SectionFamily> families = Sections.families().stream()
                .filter(family -> !family.parameters().isEmpty())
                .toList();
        SectionFamily family = families.get(random.nextInt(families.size()));
        Map<String, Double> parameters = new TreeMap<>();
        for (FamilyParameter parameter : family.parameters()) {
            double value = parameter.least() + random.nextDouble() * (parameter.most() - parameter.least());
            parameters.put(parameter.name(), parameter.whole() ? Math.rint(value) : value);
        }
        double rounding = random.nextInt(3) == 0 ? 0.02 * random.nextDouble() : 0;
        double land = random.nextInt(3) == 0 ? 0.1 * random.nextDouble() : 0;
        return new SectionShape(family.id(), parameters, rounding, land, List.of());
    }

    /** Polygons of 10 to 2000 points about the axis, from smooth to jagged and near-degenerate. */
    static Arbitrary<Outline> ofPoints() {
        return Arbitraries.randomValue(random -> polygon(radii(random)));
    }

    /** Distances from the axis of 10 to 2000 points. */
    private static double[] radii(Random random) {
        int count = (int) Math.round(10 * Math.pow(200, random.nextDouble()));
        int lobes = 1 + random.nextInt(6);
        double depth = 0.85 * random.nextDouble();
        double jag = random.nextInt(3) == 0 ? 0.3 * Math.pow(random.nextDouble(), 3) : 0;
        double[] radii = new double[count];
        for (int i = 0; i < count; i++) {
            double wave = 1 - depth * Math.pow(Math.sin(Math.PI * lobes * i / count), 2);
            radii[i] = Math.max(0.03, wave + jag * random.nextGaussian());
        }
        return radii;
    }

    /** The polygon with corners at these distances from the axis, at equal angles, on the circle of diameter 1. */
    static Outline polygon(double... radii) {
        return Outlines.normalised(sides(radii));
    }

    /** The polygon as it is, not brought to diameter 1. */
    static List<Segment> sides(double... radii) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < radii.length; i++) {
            points.add(Point.polar(radii[i], 2 * Math.PI * i / radii.length));
        }
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            sides.add(new Segment.Line(points.get(i), points.get((i + 1) % points.size())));
        }
        return sides;
    }
}
