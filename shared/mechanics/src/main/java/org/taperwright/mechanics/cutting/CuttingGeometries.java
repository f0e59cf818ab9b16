package org.taperwright.mechanics.cutting;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Sections;

/** Takes the edges half-way along the working part; a blade without edges counts as one whose face lies along the wall. */
public final class CuttingGeometries {
    private CuttingGeometries() {}

    /** The edges of a design at work. */
    public static CuttingGeometry of(Design design, BladeSections sections) {
        double level = design.workingPartMm() / 2;
        List<Edge> edges = Sections.edges(sections.outlineAt(level), design.hand());
        double room = sections.at(level).chipSpace() / (Math.PI / 4);
        double d = design.diameterMm(level);
        double flutes = design.flutesPerMm(level);
        if (edges.isEmpty()) {
            return new CuttingGeometry(level, d, 0, -90, 180, 0, 0, -90, flutes, room, edges);
        }
        double helix = sections.helixAngle(level);
        double rake = mean(edges, Edge::rakeDeg);
        double wedge = mean(edges, Edge::wedgeDeg);
        double land = mean(edges, Edge::landWidth);
        double normalRake = Math.atan(Math.tan(Math.toRadians(rake)) * Math.cos(helix));
        return new CuttingGeometry(
                level,
                d,
                edges.size(),
                rake,
                wedge,
                land * d,
                Math.toDegrees(helix),
                Math.toDegrees(normalRake),
                flutes,
                room,
                edges);
    }

    private static double mean(List<Edge> edges, ToDoubleFunction<Edge> angle) {
        return edges.stream().mapToDouble(angle).average().orElseThrow();
    }
}
