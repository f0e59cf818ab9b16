package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Walking along a closed outline from a place, forwards (anticlockwise) or backwards. */
record Walk(List<Segment> segments) {
    private static final double SHORT = 1e-12;

    Point at(Place place) {
        return segments.get(place.segment()).at(place.t());
    }

    int wrapped(int index) {
        return Math.floorMod(index, segments.size());
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

    /** The stretches from a place forwards to another; a whole turn when they are the same place. */
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

    /** Arc length from the first segment's start to a place. */
    double[] starts() {
        double[] result = new double[segments.size() + 1];
        for (int i = 0; i < segments.size(); i++) {
            result[i + 1] = result[i] + segments.get(i).length();
        }
        return result;
    }

    /** Turn of the direction where a segment ends and the next begins, rad, in (-pi, pi]. */
    double turnAtEnd(int index) {
        return Angles.signed(segments.get(wrapped(index + 1)).direction(0)
                - segments.get(index).direction(1));
    }
}
