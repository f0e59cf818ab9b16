package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/** Rounds the cutting edges of an outline, and fills its re-entrant corners, with arcs tangent to both sides. */
final class CornerArcs {
    private static final int HALVINGS = 12;
    /** The blunt end of a land that turns less than this is round enough, rad. */
    private static final double SMOOTH = Math.toRadians(1);

    /** Keeps an arc from ending on the far corner itself, where the side's direction is the next side's. */
    private static final double SHORT_OF = 1 - 1e-9;

    private CornerArcs() {}

    /** Each corner of each cutting edge replaced by an arc, then scaled to circumscribed diameter 1. */
    static OutlineResult round(Outline outline, double radius) {
        Walk walk = new Walk(outline.segments());
        List<Corner> corners = new ArrayList<>();
        for (EdgePlace place : EdgePlace.of(outline.segments())) {
            corners.add(place.first());
            if (place.last() != place.first()) {
                corners.add(place.last());
            }
        }
        corners.removeIf(corner -> corner.turn() < SMOOTH || rounder(walk, corner, radius));
        List<Corner> others = Corners.reentrant(outline.segments());
        List<CornerArc> arcs = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Optional<CornerArc> arc = arc(walk, corners, others, i, radius);
            if (arc.isEmpty()) {
                return refused(
                        "a radius of " + Numbers.text(radius) + " d does not fit between the sides of a cutting edge");
            }
            arcs.add(arc.orElseThrow());
        }
        Outline rounded = Outlines.normalised(replaced(walk, arcs));
        if (!corners.isEmpty() && EdgePlace.of(rounded.segments()).isEmpty()) {
            return refused("a radius of " + Numbers.text(radius)
                    + " d leaves the cutting edges too blunt, or clear of the circle on which the back rides");
        }
        return new OutlineResult.Drawn(rounded, List.of());
    }

    private static OutlineResult refused(String what) {
        return new OutlineResult.Refused(
                List.of(Fault.impossible("edgeRounding", what, "a smaller radius, or a wider edge")));
    }

    /** Each sharp re-entrant corner filled; where the radius does not fit, halved until it does. */
    static Outline filletReentrant(Outline outline, double radius) {
        Walk walk = new Walk(outline.segments());
        List<Corner> corners = new ArrayList<>(Corners.reentrant(outline.segments()));
        corners.removeIf(corner -> rounder(walk, corner, radius));
        List<Corner> others = Corners.convex(outline.segments());
        List<CornerArc> arcs = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Optional<CornerArc> arc = arc(walk, corners, others, i, radius);
            for (int k = 1; arc.isEmpty() && k <= HALVINGS; k++) {
                arc = arc(walk, corners, others, i, radius / (1 << k));
            }
            arc.ifPresent(arcs::add);
        }
        return new Outline(replaced(walk, arcs));
    }

    /** An arc at one corner that keeps to its half of the way to its like, and short of corners of the other kind. */
    private static Optional<CornerArc> arc(
            Walk walk, List<Corner> corners, List<Corner> others, int index, double radius) {
        Corner corner = corners.get(index);
        Corner before = corners.get(Math.floorMod(index - 1, corners.size()));
        Corner after = corners.get((index + 1) % corners.size());
        double back = round(walk, walk.distance(before.apex(), corner.apex())) / 2;
        double ahead = round(walk, walk.distance(corner.apex(), after.apex())) / 2;
        for (Corner other : others) {
            back = Math.min(back, walk.distance(other.apex(), corner.apex()));
            ahead = Math.min(ahead, walk.distance(corner.apex(), other.apex()));
        }
        return CornerArc.of(walk, corner, radius, SHORT_OF * back, SHORT_OF * ahead);
    }

    /** Whether a corner is already rounded with a radius at least as large. */
    private static boolean rounder(Walk walk, Corner corner, double radius) {
        return walk.distance(corner.entry(), corner.exit()) >= radius * Math.abs(corner.turn());
    }

    /** The way to itself is once round. */
    private static double round(Walk walk, double distance) {
        return distance == 0 ? walk.length() : distance;
    }

    private static List<Segment> replaced(Walk walk, List<CornerArc> arcs) {
        if (arcs.isEmpty()) {
            return walk.segments();
        }
        List<Segment> result = new ArrayList<>();
        for (int i = 0; i < arcs.size(); i++) {
            result.add(arcs.get(i).arc());
            result.addAll(
                    walk.path(arcs.get(i).to(), arcs.get((i + 1) % arcs.size()).from()));
        }
        return result.stream().filter(segment -> segment.length() > 0).toList();
    }
}
