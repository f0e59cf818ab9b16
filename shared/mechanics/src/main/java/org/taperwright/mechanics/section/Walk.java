package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Walking along a closed outline from a place, forwards (anticlockwise) or backwards; places by arc length. */
final class Walk {
    private static final double SHORT = 1e-12;

    private final List<Segment> segments;
    private final double[] starts;

    Walk(List<Segment> segments) {
        this.segments = segments;
        starts = new double[segments.size() + 1];
        for (int i = 0; i < segments.size(); i++) {
            starts[i + 1] = starts[i] + segments.get(i).length();
        }
    }

    List<Segment> segments() {
        return segments;
    }

    /** The point at a place. */
    Point at(Place place) {
        return segments.get(place.segment()).at(place.t());
    }

    /** An index of a segment, counted on past the last and back before the first. */
    int wrapped(int index) {
        return Math.floorMod(index, segments.size());
    }

    /** Length of the whole outline. */
    double length() {
        return starts[segments.size()];
    }

    /** Arc length at which a segment begins; of the index beyond the last, the whole length. */
    double startOf(int index) {
        return starts[index];
    }

    /** Arc length of a place from the first segment's start. */
    double position(Place place) {
        int i = place.segment();
        return starts[i] + place.t() * (starts[i + 1] - starts[i]);
    }

    /** The place at an arc length, any number of rounds. */
    Place place(double position) {
        double rest = position % length();
        double s = rest < 0 ? rest + length() : rest;
        int found = Arrays.binarySearch(starts, s);
        int index = Math.min(found >= 0 ? found : -found - 2, segments.size() - 1);
        double own = starts[index + 1] - starts[index];
        return new Place(index, own == 0 ? 0 : Math.min(1, (s - starts[index]) / own));
    }

    /** Arc length from a place forwards to another, less than a whole round. */
    double distance(Place from, Place to) {
        double apart = position(to) - position(from);
        return apart < 0 ? apart + length() : apart;
    }

    /** The first place after or before {@code from} at a given distance from a point; empty if there is none. */
    Optional<Place> toCircle(Place from, boolean forward, Point centre, double radius) {
        for (int i = 0; i <= segments.size(); i++) {
            int index = wrapped(forward ? from.segment() + i : from.segment() - i);
            double[] crossings = CircleCrossings.of(segments.get(index), centre, radius);
            for (int k = 0; k < crossings.length; k++) {
                double t = crossings[forward ? k : crossings.length - 1 - k];
                boolean past = forward ? t > from.t() + SHORT : t < from.t() - SHORT;
                if (i == 0 ? past : i < segments.size() || !past) {
                    return Optional.of(new Place(index, t));
                }
            }
        }
        return Optional.empty();
    }

    /** The stretches from a place forwards to another; a whole round when they are the same place. */
    List<Segment> path(Place from, Place to) {
        List<Segment> result = new ArrayList<>();
        if (from.segment() == to.segment() && to.t() > from.t()) {
            addPart(result, from.segment(), from.t(), to.t());
            return result;
        }
        addPart(result, from.segment(), from.t(), 1);
        for (int i = wrapped(from.segment() + 1); i != to.segment(); i = wrapped(i + 1)) {
            result.add(segments.get(i));
        }
        addPart(result, to.segment(), 0, to.t());
        return result;
    }

    private void addPart(List<Segment> result, int index, double from, double to) {
        Segment segment = segments.get(index);
        if ((to - from) * segment.length() > SHORT) {
            result.add(from == 0 && to == 1 ? segment : segment.part(from, to));
        }
    }

    /** Turn of the direction where a segment ends and the next begins, rad, in (-pi, pi]. */
    double turnAtEnd(int index) {
        return Angles.signed(segments.get(wrapped(index + 1)).direction(0)
                - segments.get(index).direction(1));
    }
}
