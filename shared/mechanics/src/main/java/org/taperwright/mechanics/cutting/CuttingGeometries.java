package org.taperwright.mechanics.cutting;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Sections;

/**
 * The edges half-way along the working part, and a provisional index of how readily they cut:
 *
 * <pre>index = direction * keenness * sharpness * bearing * room
 *
 * direction  cos psi where the edge travels around the axis (rotation, reaming, reciprocation), sin psi where it travels
 *            along it (filing): the part of the motion across an edge that stands at the helix angle psi from the axis
 * keenness   tan(45 deg - (beta - alpha_n) / 2): inverse of Merchant's shear-plane cutting energy, with the rake across
 *            the edge tan alpha_n = tan alpha cos psi and the friction angle beta; 0 from beta - alpha_n = 90 deg on,
 *            where the edge only rubs
 * sharpness  1 / tan(omega / 2): depth to which a wedge of angle omega sinks under a given force per length
 * bearing    1 / (1 + l / 0.05): share of the side force left to the edge when a land of width l (in diameters) carries
 *            its part, against an edge that bears over 0.05 d
 * room       chip space over the area of the circle</pre>
 *
 * The number of edges does not enter by itself: at a given side force more edges each sink less. It enters by the room
 * they leave. A blade without edges has the index 0. The index rises with rake and chip space and falls with wedge angle
 * and land width, as the trade holds (common practice, no source); its size means nothing, and neither dentine nor speed
 * is in it. Sources: Merchant, J Appl Phys 16 (1945), for keenness; slip-line theory of wedge indentation (Hill) for
 * sharpness, in its frictionless form without lip.
 */
public final class CuttingGeometries {
    /** Friction angle, rad: coefficient 0.25, the middle of 0.1 to 0.4 (published range, from memory, low confidence). */
    private static final double FRICTION_ANGLE = Math.atan(0.25);

    private static final double BEARING_WIDTH = 0.05;

    private CuttingGeometries() {}

    /** The edges of a design at work. */
    public static CuttingGeometry of(Design design, BladeSections sections) {
        double level = design.workingPartMm() / 2;
        List<Edge> edges = Sections.edges(sections.outlineAt(level), design.hand());
        double room = sections.at(level).chipSpace() / (Math.PI / 4);
        double d = design.diameterMm(level);
        double flutes = design.flutesPerMm(level);
        if (edges.isEmpty()) {
            return new CuttingGeometry(level, 0, -90, 180, 0, 0, -90, flutes, room, 0);
        }
        double helix = sections.helixAngle(level);
        double rake = mean(edges, Edge::rakeDeg);
        double wedge = mean(edges, Edge::wedgeDeg);
        double land = mean(edges, Edge::landWidth);
        double normalRake = Math.atan(Math.tan(Math.toRadians(rake)) * Math.cos(helix));
        double index = index(design.motion(), helix, normalRake, Math.toRadians(wedge), land, room);
        return new CuttingGeometry(
                level,
                edges.size(),
                rake,
                wedge,
                land * d,
                Math.toDegrees(helix),
                Math.toDegrees(normalRake),
                flutes,
                room,
                index);
    }

    /** The index of the class comment; angles in rad, land in diameters, room as a share of the circle. */
    static double index(Motion motion, double helix, double normalRake, double wedge, double land, double room) {
        double direction = switch (motion) {
            case FILING -> Math.sin(helix);
            case REAMING, ROTATION, RECIPROCATION -> Math.cos(helix);
        };
        double keenness = Math.tan(Math.max(0, Math.PI / 4 - (FRICTION_ANGLE - normalRake) / 2));
        double sharpness = 1 / Math.tan(wedge / 2);
        double bearing = 1 / (1 + land / BEARING_WIDTH);
        return direction * keenness * sharpness * bearing * room;
    }

    private static double mean(List<Edge> edges, ToDoubleFunction<Edge> angle) {
        return edges.stream().mapToDouble(angle).average().orElseThrow();
    }
}
