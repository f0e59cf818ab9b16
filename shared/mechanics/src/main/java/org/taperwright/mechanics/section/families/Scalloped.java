package org.taperwright.mechanics.section.families;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Segment;

/**
 * The circumscribed circle cut by n equal circles of radius r centred at distance D in the directions 90° + i 360°/n.
 * With the land angle λ, each cut spans a half-angle {@code a = 180°/n - λ/2}; with the core diameter k its depth under
 * the chord is {@code s = cos(a)/2 - k/2}, so {@code r = ((sin(a)/2)^2 + s^2)/(2 s)} and {@code D = k/2 + r}.
 */
public final class Scalloped implements SectionFamily {
    private static final double RADIUS = 0.5;
    /** The least angle between land and flute that still makes an edge, rad. */
    private static final double SHALLOWEST = Math.toRadians(22);

    @Override
    public String id() {
        return "scalloped";
    }

    @Override
    public String label() {
        return "Scalloped";
    }

    @Override
    public String explanation() {
        return "Round flutes cut into a circle; what is left of the circle between them are the radial lands.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(
                new FamilyParameter("flutes", "Flutes", "", 1, 8, 3, 1, true, "How many flutes are cut."),
                new FamilyParameter(
                        "coreDiameter",
                        "Core diameter",
                        "d",
                        0.1,
                        0.95,
                        0.36,
                        0.01,
                        false,
                        "Diameter of the circle that the flutes leave in the middle."),
                new FamilyParameter(
                        "landAngleDeg",
                        "Land angle",
                        "°",
                        0,
                        300,
                        18,
                        1,
                        false,
                        "Angle of circle left between two flutes, seen from the axis; 0 leaves sharp cusps."));
    }

    /**
     * The shape given by its cutting circles.
     *
     * @param flutes how many
     * @param radius radius r of each cutting circle, in diameters
     * @param distance distance D of their centres from the axis, in diameters
     */
    public static SectionShape byCircles(int flutes, double radius, double distance) {
        double cos = (distance * distance + RADIUS * RADIUS - radius * radius) / (2 * distance * RADIUS);
        double half = Math.acos(Math.max(-1, Math.min(1, cos)));
        return SectionShape.of(
                "scalloped",
                Map.of(
                        "flutes",
                        (double) flutes,
                        "coreDiameter",
                        2 * (distance - radius),
                        "landAngleDeg",
                        360.0 / flutes - 2 * Math.toDegrees(half)));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        int flutes = (int) value(shape, "flutes");
        double core = value(shape, "coreDiameter") / 2;
        double land = Math.toRadians(value(shape, "landAngleDeg"));
        double half = Math.PI / flutes - land / 2;
        if (half < Math.toRadians(2)) {
            return Drawings.refused(
                    "landAngleDeg",
                    "the lands leave no room for " + flutes + " flutes",
                    "a land angle of at most " + (int) Math.floor(360.0 / flutes - 4) + "°");
        }
        double depth = RADIUS * Math.cos(half) - core;
        if (depth <= 1e-4) {
            return Drawings.refused(
                    "coreDiameter",
                    "the core leaves no hollow flute between the lands",
                    "a smaller core or wider lands, so that the core is below "
                            + Math.max(0, Math.floor(1000 * Math.cos(half)) / 1000));
        }
        double chord = RADIUS * Math.sin(half);
        double turn = half + 2 * Math.atan(depth / chord);
        if (turn < SHALLOWEST) {
            return Drawings.refused(
                    "coreDiameter",
                    "the flutes are too shallow to leave a cutting edge",
                    "a smaller core or narrower lands");
        }
        double radius = (chord * chord + depth * depth) / (2 * depth);
        double distance = core + radius;
        if (neighboursMeet(flutes, radius, distance)) {
            return Drawings.refused(
                    "coreDiameter",
                    "neighbouring flutes run into each other",
                    "a larger core, wider lands or fewer flutes");
        }
        return Drawings.drawn(segments(flutes, land, half, -depth));
    }

    /** On the bisector between two flutes the cutting circle passes wholly beneath the land. */
    private static boolean neighboursMeet(int flutes, double radius, double distance) {
        double aside = distance * Math.sin(Math.PI / flutes);
        double along = distance * Math.cos(Math.PI / flutes);
        return flutes > 2 && aside <= radius && along + Math.sqrt(radius * radius - aside * aside) < RADIUS - 1e-9;
    }

    private static List<Segment> segments(int flutes, double land, double half, double sagitta) {
        List<Segment> result = new ArrayList<>();
        for (int i = 0; i < flutes; i++) {
            double middle = Math.PI / 2 + i * 2 * Math.PI / flutes;
            result.add(Segment.bowed(Point.polar(RADIUS, middle - half), Point.polar(RADIUS, middle + half), sagitta));
            if (land > 1e-9) {
                result.add(new Segment.Arc(Point.AXIS, RADIUS, middle + half, middle + half + land));
            }
        }
        return result;
    }
}
