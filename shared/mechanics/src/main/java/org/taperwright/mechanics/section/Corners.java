package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds sharp turns: at least {@link #SHARP} within {@link #WINDOW} of arc length. A vertex or an arc that is sharp by
 * itself stands alone, so that both ends of a narrow land are found; smaller turns are gathered, so that a corner traced
 * by many points is found once and a circle drawn as a polygon has none.
 */
final class Corners {
    /** Least turn, rad. */
    static final double SHARP = Math.toRadians(20);
    /** Arc length over which it happens, in diameters. */
    static final double WINDOW = 0.02;
    /** A little over half, so that of two equal turns it is always the second that holds the middle. */
    private static final double HALF = 0.5 + 1e-9;
    /** Arcs of a larger radius are sides, whose turn is no part of a corner, in diameters. */
    private static final double SIDE = 0.15;

    private final Walk walk;
    private final double sense;

    private Corners(List<Segment> segments, double sense) {
        this.walk = new Walk(segments);
        this.sense = sense;
    }

    /** Corners that stick out, in the order of the run. */
    static List<Corner> convex(List<Segment> segments) {
        return new Corners(segments, 1).find();
    }

    /** Corners that reach in, in the order of the run. */
    static List<Corner> reentrant(List<Segment> segments) {
        return new Corners(segments, -1).find();
    }

    /** A turn over a stretch of arc length; at a vertex the stretch is empty. */
    private record Turn(double from, double to, double amount) {
        double within(double left, double right) {
            if (to <= from) {
                return from >= left && from <= right ? amount : 0;
            }
            double overlap = Math.min(right, to) - Math.max(left, from);
            return overlap <= 0 ? 0 : amount * overlap / (to - from);
        }
    }

    private List<Corner> find() {
        List<Corner> result = new ArrayList<>();
        List<List<Turn>> gathered = new ArrayList<>();
        List<Turn> run = new ArrayList<>();
        int count = walk.segments().size();
        for (int i = 0; i < count; i++) {
            Segment segment = walk.segments().get(i);
            if (standsAlone(segment.turn(), segment.length())) {
                result.add(new Corner(new Place(i, 0), new Place(i, 0.5), new Place(i, 1), segment.turn()));
                run = closed(gathered, run);
            } else if (segment instanceof Segment.Arc arc && arc.radius() < SIDE) {
                run.add(new Turn(walk.startOf(i), walk.startOf(i + 1), sense * segment.turn()));
            }
            double turn = walk.turnAtEnd(i);
            int next = (i + 1) % count;
            if (sense * turn >= SHARP) {
                result.add(new Corner(new Place(i, 1), new Place(next, 0), new Place(next, 0), turn));
                run = closed(gathered, run);
            } else {
                run.add(new Turn(walk.startOf(i + 1), walk.startOf(i + 1), sense * turn));
            }
        }
        boolean unbroken = result.isEmpty();
        if (unbroken) {
            gathered.add(twice(run));
        } else {
            joinEnds(gathered, run);
        }
        gathered.forEach(turns -> gather(turns, result));
        result.sort(Comparator.comparingDouble(corner -> walk.position(corner.apex())));
        return unbroken ? withoutRepeats(result) : result;
    }

    private boolean standsAlone(double turn, double length) {
        return sense * turn >= SHARP && sense * turn * WINDOW >= SHARP * length;
    }

    private static List<Turn> closed(List<List<Turn>> gathered, List<Turn> run) {
        gathered.add(run);
        return new ArrayList<>();
    }

    /** The run that was open at the end goes on in the one that was open at the start. */
    private void joinEnds(List<List<Turn>> gathered, List<Turn> run) {
        double round = walk.length();
        for (Turn turn : gathered.get(0)) {
            run.add(new Turn(turn.from() + round, turn.to() + round, turn.amount()));
        }
        gathered.set(0, run);
    }

    /** With nothing to break the round, it is gone through twice so that a corner at the start is found whole. */
    private List<Turn> twice(List<Turn> run) {
        List<List<Turn>> both = new ArrayList<>(List.of(run));
        joinEnds(both, new ArrayList<>(run));
        return both.get(0);
    }

    private void gather(List<Turn> turns, List<Corner> result) {
        double left = Double.NaN;
        double right = Double.NaN;
        for (double[] window : sharpWindows(turns)) {
            if (window[0] <= right) {
                right = Math.max(right, window[1]);
                continue;
            }
            if (right >= left) {
                result.add(corner(turns, left, right));
            }
            left = window[0];
            right = window[1];
        }
        if (right >= left) {
            result.add(corner(turns, left, right));
        }
    }

    /** Windows that begin or end with a turn and hold a sharp one, by their left ends. */
    private static List<double[]> sharpWindows(List<Turn> turns) {
        List<double[]> result = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < turns.size(); i++) {
            while (turns.get(first).to() < turns.get(i).from() - WINDOW) {
                first++;
            }
            addIfSharp(turns, first, turns.get(i).from(), result);
            addIfSharp(turns, first, turns.get(i).to() - WINDOW, result);
        }
        result.sort(Comparator.comparingDouble(window -> window[0]));
        return result;
    }

    private static void addIfSharp(List<Turn> turns, int first, double left, List<double[]> result) {
        double total = 0;
        for (int k = first; k < turns.size() && turns.get(k).from() <= left + WINDOW; k++) {
            total += turns.get(k).within(left, left + WINDOW);
        }
        if (total >= SHARP) {
            result.add(new double[] {left, left + WINDOW});
        }
    }

    /** The corner between the places where 5 and 95 % of the turn in a stretch are done. */
    private Corner corner(List<Turn> turns, double left, double right) {
        double total = 0;
        for (Turn turn : turns) {
            total += turn.within(left, right);
        }
        return new Corner(
                place(turns, left, right, 0.05 * total),
                place(turns, left, right, HALF * total),
                place(turns, left, right, 0.95 * total),
                sense * total);
    }

    private Place place(List<Turn> turns, double left, double right, double wanted) {
        double done = 0;
        for (Turn turn : turns) {
            double share = turn.within(left, right);
            if (share > 0 && done + share >= wanted) {
                double from = Math.max(left, turn.from());
                double to = Math.min(right, turn.to());
                return walk.place(from + Math.max(0, to - from) * (wanted - done) / share);
            }
            done += share;
        }
        return walk.place(right);
    }

    /** Of corners found on both rounds, the sharper finding. */
    private List<Corner> withoutRepeats(List<Corner> corners) {
        double round = walk.length();
        List<Corner> result = new ArrayList<>();
        for (Corner corner : corners) {
            boolean sharpest = corners.stream().allMatch(other -> {
                double apart = Math.abs(walk.position(corner.apex()) - walk.position(other.apex()));
                boolean same = Math.min(apart, round - apart) <= WINDOW / 2;
                return !same || sense * corner.turn() >= sense * other.turn();
            });
            boolean first = result.stream()
                    .noneMatch(other ->
                            Math.abs(walk.position(corner.apex()) - walk.position(other.apex())) <= WINDOW / 2);
            if (sharpest && first) {
                result.add(corner);
            }
        }
        return result;
    }
}
