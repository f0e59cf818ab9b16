package org.taperwright.shaping.placement;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.shaping.canal.Centreline;

/**
 * The stretches over which a placed instrument leans on the wall. The load at a point of a stretch depends on how stiff the wall
 * is taken to be and, near a rigid one, on the distance of nodes; the net force of a stretch does not.
 */
public final class ContactZones {
    /** Loads below this are none, N/mm. */
    private static final double NOTHING_N_PER_MM = 0.002;

    private static final double BRIDGED_MM = 0.35;
    private static final double LEAST_FORCE_N = 0.03;
    private static final double SIDEWAYS = 0.5;

    private final Placement placement;
    private final Centreline line;
    private final List<ContactZone> zones = new ArrayList<>();

    private ContactZones(Placement placement, Centreline line) {
        this.placement = placement;
        this.line = line;
    }

    /** The zones by rising depth; a force below 0.03 N is left out. */
    public static List<ContactZone> of(Placement placement, Centreline line) {
        ContactZones found = new ContactZones(placement, line);
        found.walk();
        return List.copyOf(found.zones);
    }

    private void walk() {
        int from = -1;
        int last = -1;
        for (int i = 0; i < placement.nodes(); i++) {
            if (placement.load(i) <= NOTHING_N_PER_MM) {
                continue;
            }
            if (from >= 0 && apart(last, i)) {
                add(from, last);
                from = i;
            }
            from = from < 0 ? i : from;
            last = i;
        }
        if (from >= 0) {
            add(from, last);
        }
    }

    private boolean apart(int last, int next) {
        double turn = placement.loadFirst(last) * placement.loadFirst(next)
                + placement.loadSecond(last) * placement.loadSecond(next);
        return turn < 0 || placement.depthMm(next) - placement.depthMm(last) > BRIDGED_MM + 1e-9;
    }

    private void add(int from, int to) {
        double first = 0;
        double second = 0;
        double sum = 0;
        double depth = 0;
        double level = 0;
        int most = from;
        for (int i = from; i <= to; i++) {
            double share = placement.load(i) * placement.reachMm(i);
            first += placement.loadFirst(i) * placement.reachMm(i);
            second += placement.loadSecond(i) * placement.reachMm(i);
            sum += share;
            depth += share * placement.depthMm(i);
            level += share * placement.levelMm(i);
            most = placement.load(i) > placement.load(most) ? i : most;
        }
        double force = Math.hypot(first, second);
        if (force >= LEAST_FORCE_N) {
            zones.add(new ContactZone(depth / sum, level / sum, force, first, second, side(most)));
        }
    }

    private ContactZone.Side side(int node) {
        int near = nearestCurved(node);
        if (near < 0) {
            return ContactZone.Side.STRAIGHT;
        }
        double k1 = line.firstAt(placement.depthMm(near));
        double k2 = line.secondAt(placement.depthMm(near));
        double cosine = (placement.loadFirst(node) * k1 + placement.loadSecond(node) * k2)
                / (placement.load(node) * Math.hypot(k1, k2));
        if (Math.abs(cosine) <= SIDEWAYS) {
            return ContactZone.Side.ASIDE;
        }
        return cosine > 0 ? ContactZone.Side.INNER : ContactZone.Side.OUTER;
    }

    /** The nearest node at which the canal is curved; -1 where there is none. */
    private int nearestCurved(int node) {
        for (int away = 0; away < placement.nodes(); away++) {
            if (curved(node - away)) {
                return node - away;
            }
            if (curved(node + away)) {
                return node + away;
            }
        }
        return -1;
    }

    private boolean curved(int node) {
        if (node < 0 || node >= placement.nodes()) {
            return false;
        }
        double depth = placement.depthMm(node);
        return line.firstAt(depth) != 0 || line.secondAt(depth) != 0;
    }
}
