package org.taperwright.mechanics.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** Sections of every family at any of their limits, and outlines of 10 to 2000 points, good, poor and hardly any. */
final class AnySection {
    private AnySection() {}

    static SectionShape of(Random random) {
        return random.nextInt(3) == 0 ? custom(random) : family(random);
    }

    private static SectionShape family(Random random) {
        List<SectionFamily> families = Sections.families().stream()
                .filter(family -> !family.takesPoints())
                .toList();
        SectionFamily family = families.get(random.nextInt(families.size()));
        Map<String, Double> parameters = new TreeMap<>();
        for (FamilyParameter parameter : family.parameters()) {
            double value = AnyDesign.corner(random, parameter.least(), parameter.most());
            parameters.put(parameter.name(), parameter.whole() ? Math.rint(value) : value);
        }
        double rounding = random.nextInt(3) == 0 ? AnyDesign.corner(random, 1e-6, 0.05) : 0;
        double land = random.nextInt(3) == 0 ? AnyDesign.corner(random, 1e-6, 0.3) : 0;
        return new SectionShape(family.id(), parameters, rounding, land, List.of());
    }

    private static SectionShape custom(Random random) {
        int count = (int) Math.round(10 * Math.pow(200, AnyDesign.corner(random, 0, 1)));
        List<Point> points = switch (random.nextInt(6)) {
            case 0 -> star(random, count, 0.9);
            case 1 -> sliver(random, count);
            case 2 -> slits(random, count);
            case 3 -> crowded(random, count);
            case 4 -> fins(random, count);
            default -> star(random, count, 0.3);
        };
        return new SectionShape("custom", Map.of(), 0, 0, points);
    }

    /** Lobes with jagged or smooth sides. */
    private static List<Point> star(Random random, int count, double depth) {
        int lobes = 1 + random.nextInt(8);
        double deep = depth * random.nextDouble();
        double jag = random.nextInt(3) == 0 ? 0.3 * Math.pow(random.nextDouble(), 3) : 0;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double wave = 1 - deep * Math.pow(Math.sin(Math.PI * lobes * i / count), 2);
            points.add(Point.polar(Math.max(0.02, wave + jag * random.nextGaussian()), 2 * Math.PI * i / count));
        }
        return points;
    }

    /** A strip down to thinner than the theory bears, its long sides wavy. */
    private static List<Point> sliver(Random random, int count) {
        double half = 0.5 * Math.pow(10, -3 * random.nextDouble());
        List<Point> points = new ArrayList<>();
        int side = Math.max(5, count / 2);
        for (int k = 0; k < 2 * side; k++) {
            double along = k < side ? -1 + 2.0 * k / (side - 1) : 1 - 2.0 * (k - side) / (side - 1);
            double thick = half * (0.4 + 0.6 * Math.abs(Math.cos(3 * along)));
            points.add(new Point(along, k < side ? -thick : thick));
        }
        return points;
    }

    /** A disc with slits whose sides all but touch. */
    private static List<Point> slits(Random random, int count) {
        int slits = 1 + random.nextInt(5);
        double gap = Math.pow(10, -1 - 6 * random.nextDouble());
        double depth = 0.1 + 0.7 * random.nextDouble();
        int arc = Math.max(3, count / slits - 2);
        List<Point> points = new ArrayList<>();
        for (int s = 0; s < slits; s++) {
            double from = 2 * Math.PI * s / slits + gap;
            double to = 2 * Math.PI * (s + 1) / slits - gap;
            points.add(Point.polar(1 - depth, from - gap / 2));
            for (int k = 0; k <= arc; k++) {
                points.add(Point.polar(1, from + (to - from) * k / arc));
            }
            points.add(Point.polar(1 - depth, to + gap / 2));
        }
        return points;
    }

    /** Points in clusters of edges down to a millionth, some repeated. */
    private static List<Point> crowded(Random random, int count) {
        double tiny = Math.pow(10, -2 - 5 * random.nextDouble());
        List<Point> points = new ArrayList<>();
        double angle = 0;
        double radius = 1;
        while (points.size() < count && angle < 2 * Math.PI - 0.01) {
            boolean far = random.nextInt(4) == 0;
            angle += far ? 8 * Math.PI / count * random.nextDouble() : tiny * random.nextDouble();
            radius = far ? 0.4 + 0.6 * random.nextDouble() : radius + tiny * random.nextGaussian();
            points.add(Point.polar(Math.max(0.05, Math.min(1, radius)), angle));
        }
        return points;
    }

    /** Thin fins on a core. */
    private static List<Point> fins(Random random, int count) {
        int fins = Math.max(2, Math.min(60, count / 4));
        double thin = Math.PI / fins * Math.pow(10, -2.5 * random.nextDouble()) * 0.9;
        double core = 0.05 + 0.6 * random.nextDouble();
        List<Point> points = new ArrayList<>();
        for (int f = 0; f < fins; f++) {
            double at = 2 * Math.PI * f / fins;
            points.add(Point.polar(core, at - thin));
            points.add(Point.polar(1, at - thin * core));
            points.add(Point.polar(1, at + thin * core));
            points.add(Point.polar(core, at + thin));
        }
        return points;
    }

    /** A few words on a section. */
    static String text(SectionShape shape) {
        return shape.family()
                + (shape.points().isEmpty()
                        ? " " + shape.parameters()
                        : " of " + shape.points().size() + " points")
                + (shape.edgeRounding() > 0 ? " rounded by " + shape.edgeRounding() : "")
                + (shape.landWidth() > 0 ? " with lands of " + shape.landWidth() : "");
    }
}
