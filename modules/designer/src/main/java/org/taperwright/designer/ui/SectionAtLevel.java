package org.taperwright.designer.ui;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.section.Segment;

/**
 * The section at one level, ready to be drawn; geometry only, so that it keeps up with dragging.
 *
 * @param levelMm level, mm from the tip
 * @param diameterMm diameter of the circumscribed circle there, mm
 * @param outline outline of unit diameter
 * @param edges its cutting edges
 * @param hand the sense in which they lead
 */
record SectionAtLevel(double levelMm, double diameterMm, Outline outline, List<Edge> edges, Hand hand) {
    private static final int CORE_STEPS = 48;

    SectionAtLevel {
        edges = List.copyOf(edges);
    }

    /** The section of a design at a level, where its stations can be drawn. */
    static Optional<SectionAtLevel> of(Design design, double levelMm) {
        double diameter = design.diameterMm(levelMm);
        if (!(diameter > 0)) {
            return Optional.empty();
        }
        return outline(design.sections(), levelMm)
                .map(outline -> new SectionAtLevel(
                        levelMm, diameter, outline, Sections.edges(outline, design.hand()), design.hand()));
    }

    /** Radius of the core in diameters: the outline's least distance from the axis. */
    double coreRadius() {
        double least = 0.5;
        for (Segment piece : outline.segments()) {
            for (int i = 0; i <= CORE_STEPS; i++) {
                least = Math.min(least, piece.at((double) i / CORE_STEPS).radius());
            }
            if (piece instanceof Segment.Line line) {
                least = Math.min(least, distance(line.from(), line.to()));
            }
        }
        return least;
    }

    private static Optional<Outline> outline(List<SectionStation> stations, double level) {
        if (stations.isEmpty()) {
            return Optional.empty();
        }
        SectionStation below = stations.get(0);
        for (SectionStation above : stations) {
            if (level <= above.levelMm()) {
                double span = above.levelMm() - below.levelMm();
                return span <= 0 ? drawn(above) : between(below, above, (level - below.levelMm()) / span);
            }
            below = above;
        }
        return drawn(below);
    }

    private static Optional<Outline> between(SectionStation below, SectionStation above, double share) {
        if (share <= 0 || below.shape().equals(above.shape())) {
            return drawn(below);
        }
        return drawn(below).flatMap(a -> drawn(above).map(b -> share >= 1 ? b : Sections.blend(a, b, share)));
    }

    private static Optional<Outline> drawn(SectionStation station) {
        return Sections.outline(station.shape()) instanceof OutlineResult.Drawn drawn
                ? Optional.of(drawn.outline())
                : Optional.empty();
    }

    private static double distance(Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double length2 = dx * dx + dy * dy;
        double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, -(a.x() * dx + a.y() * dy) / length2));
        return Math.hypot(a.x() + t * dx, a.y() + t * dy);
    }
}
