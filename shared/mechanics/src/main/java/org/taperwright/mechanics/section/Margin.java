package org.taperwright.mechanics.section;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/**
 * Grinds a land on each cutting edge: the outline is scaled up about the axis by a factor s >= 1 and clipped by the
 * circle of diameter 1, s chosen so that the widest land so made at a cutting edge has the wanted width along the
 * circle. Edges that stand on one circle get equal lands; one that stands lower gets a narrower land or none.
 */
final class Margin {
    private static final double WANTED = 1e-7;

    private Margin() {}

    static OutlineResult ground(Outline outline, double width) {
        List<EdgePlace> places = EdgePlace.of(outline.segments());
        Walk walk = new Walk(outline.segments());
        if (places.isEmpty()) {
            return refused(width, "the outline has no cutting edge to grind it on");
        }
        if (widest(walk, places, Outlines.CIRCLE_RADIUS * (1 - 1e-9)) > width + WANTED) {
            return new OutlineResult.Drawn(
                    outline,
                    List.of(Fault.unusual(
                            "landWidth",
                            "the section's own lands are wider than " + Numbers.text(width) + " d",
                            "a wider land; the section is left as it is")));
        }
        double low = Outlines.coreRadius(outline);
        double high = Outlines.CIRCLE_RADIUS;
        while (high - low > 1e-14) {
            double middle = (low + high) / 2;
            if (widest(walk, places, middle) > width) {
                low = middle;
            } else {
                high = middle;
            }
        }
        if (Math.abs(widest(walk, places, high) - width) > WANTED) {
            return refused(width, "before that width the lands of neighbouring edges meet");
        }
        Outline ground = Outlines.normalised(DiscClip.clipped(outline.segments(), high));
        return new OutlineResult.Drawn(
                ground,
                EdgePlace.of(ground.segments()).size() > places.size() ? List.of(alsoAlongTheBack()) : List.of());
    }

    private static Fault alsoAlongTheBack() {
        return Fault.unusual(
                "landWidth",
                "the land also runs along the back of the section, which then counts as an edge",
                "a narrower land where only the edge should bear");
    }

    private static OutlineResult refused(double width, String why) {
        return new OutlineResult.Refused(List.of(Fault.impossible(
                "landWidth",
                "a land of " + Numbers.text(width) + " d cannot be ground: " + why,
                "a narrower land, or 0 for none")));
    }

    /** Width after scaling of the widest land when the outline is clipped by a circle of a given radius. */
    private static double widest(Walk walk, List<EdgePlace> places, double radius) {
        double result = 0;
        for (EdgePlace place : places) {
            if (walk.at(place.first().apex()).radius() < radius
                    && walk.at(place.last().apex()).radius() < radius) {
                continue;
            }
            Optional<Place> before = walk.toCircle(place.first().apex(), false, Point.AXIS, radius);
            Optional<Place> after = walk.toCircle(place.last().apex(), true, Point.AXIS, radius);
            double angle = before.isEmpty() || after.isEmpty()
                    ? Angles.FULL
                    : Angles.positive(walk.at(after.orElseThrow()).angle()
                            - walk.at(before.orElseThrow()).angle());
            result = Math.max(result, angle * Outlines.CIRCLE_RADIUS);
        }
        return result;
    }
}
