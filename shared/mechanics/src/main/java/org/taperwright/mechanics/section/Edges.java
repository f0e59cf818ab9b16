package org.taperwright.mechanics.section;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Cutting edges with their angles, for an outline drawn as seen from the handle. Turning clockwise, an edge runs toward
 * smaller angles, so its leading face is the side that the anticlockwise outline reaches first; turning anticlockwise is
 * the mirror image.
 *
 * <p>With the edge E, and F and B the points of the leading face and of the back at a distance of 5 % of d from it:
 * rake = angle from the radius at E to EF, positive when the face leans forward over its foot; clearance = angle from
 * the circle's tangent at E to EB, or 0 on a land; wedge = angle FEB = 90° - rake - clearance. A regular polygon of n
 * sides so has wedge 180° - 360°/n, rake 180°/n - 90° and clearance 180°/n.
 *
 * <p>Source: rake measured from the radius, as usual for these instruments (common practice, no source) and for
 * cutting tools with one edge; the sum of rake, wedge and clearance is 90° by ISO 3002-1 (from memory).
 */
final class Edges {
    /** How far from the edge the faces are measured, in diameters. */
    static final double CHORD = 0.05;

    /** An edge on +x comes first even if rounding puts it a little below, rad. */
    private static final double SEAM = 1e-9;

    private Edges() {}

    static List<Edge> of(Outline outline, Hand hand) {
        List<Edge> edges = hand == Hand.CLOCKWISE
                ? clockwise(outline)
                : clockwise(Outlines.mirrored(outline)).stream()
                        .map(Edges::mirrored)
                        .toList();
        return edges.stream()
                .sorted(Comparator.comparingDouble(edge -> Angles.positive(edge.angle() + SEAM)))
                .toList();
    }

    private static Edge mirrored(Edge edge) {
        Point at = new Point(edge.at().x(), -edge.at().y());
        return new Edge(at, at.angle(), edge.wedgeDeg(), edge.rakeDeg(), edge.clearanceDeg(), edge.landWidth());
    }

    private static List<Edge> clockwise(Outline outline) {
        Walk walk = new Walk(outline.segments());
        return EdgePlace.of(outline.segments()).stream()
                .flatMap(place -> edge(walk, place).stream())
                .toList();
    }

    private static Optional<Edge> edge(Walk walk, EdgePlace place) {
        Point at = walk.at(place.first().apex());
        Optional<Point> face =
                walk.toCircle(place.first().apex(), false, at, CHORD).map(walk::at);
        Optional<Point> back =
                walk.toCircle(place.last().apex(), true, at, CHORD).map(walk::at);
        if (face.isEmpty() || back.isEmpty()) {
            return Optional.empty();
        }
        double rake = rake(at, face.orElseThrow());
        double land = Angles.positive(walk.at(place.last().apex()).angle() - at.angle()) * Outlines.CIRCLE_RADIUS;
        double clearance = place.first() == place.last() ? clearance(at, back.orElseThrow()) : 0;
        return Optional.of(new Edge(at, at.angle(), 90 - rake - clearance, rake, clearance, land));
    }

    /** Angle from the inward radius to the face, positive toward the back. */
    private static double rake(Point edge, Point face) {
        Point inward = edge.times(-1);
        Point along = face.minus(edge);
        return Math.toDegrees(Math.atan2(along.cross(inward), along.dot(inward)));
    }

    /** Angle from the circle's tangent, pointing backwards, to the back; positive inwards. */
    private static double clearance(Point edge, Point back) {
        Point backwards = edge.turned(Math.PI / 2);
        Point along = back.minus(edge);
        return Math.toDegrees(Math.atan2(backwards.cross(along), backwards.dot(along)));
    }
}
