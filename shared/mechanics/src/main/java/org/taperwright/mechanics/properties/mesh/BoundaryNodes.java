package org.taperwright.mechanics.properties.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.taperwright.mechanics.properties.contour.BoundaryPoint;
import org.taperwright.mechanics.properties.contour.Contour;

/**
 * The corner nodes of a mesh on the outline, in order, with the places a third and two thirds of the way to the next:
 * all at corners of the outline, the rest spread by the size field.
 */
final class BoundaryNodes {
    private static final double LONG = 0.6;
    /** Places nearer than this along the outline, in diameters, share a node: no triangle could be that small. */
    private static final double APART = 2e-5;

    private final Contour contour;
    private final SizeField sizes;
    private double[] s = new double[64];
    private int count;

    /**
     * Spreads nodes over a contour.
     *
     * @param shortest bends shorter than this get one node, in their middle
     */
    BoundaryNodes(Contour contour, SizeField sizes, double shortest) {
        this.contour = contour;
        this.sizes = sizes;
        spread(shortest);
    }

    int count() {
        return count;
    }

    /** The place at a third k (0 to 3) of the way from a node to the next. */
    BoundaryPoint third(int node, int k) {
        double from = s[node];
        double to = node + 1 < count ? s[node + 1] : s[0] + contour.perimeter();
        return contour.along(from + (to - from) * k / 3);
    }

    private void spread(double shortest) {
        List<Double> fixed = fixed(shortest);
        double start = fixed.isEmpty() ? 0 : fixed.get(0);
        int stretches = Math.max(1, fixed.size());
        for (int k = 0; k < stretches; k++) {
            double from = k == 0 ? start : fixed.get(k);
            double to = k + 1 < stretches ? fixed.get(k + 1) : start + contour.perimeter();
            add(from);
            fill(from, to, stretches < 3 ? 4 : 1);
        }
    }

    /** Where nodes must stand: at corners, where two long pieces meet, and in the middle of short bends. */
    private List<Double> fixed(double shortest) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < contour.size(); i++) {
            if (corner(i) || longBoth(i)) {
                places.add(contour.begins(i));
            }
            if (Math.abs(contour.sweep(i)) > Contour.CORNER && contour.length(i) < shortest) {
                places.add(contour.begins(i) + contour.length(i) / 2);
            }
        }
        return apart(places);
    }

    private List<Double> apart(List<Double> places) {
        List<Double> kept = new ArrayList<>();
        for (double place : places) {
            boolean fresh = kept.isEmpty()
                    || place - kept.get(kept.size() - 1) > APART && kept.get(0) + contour.perimeter() - place > APART;
            if (fresh) {
                kept.add(place);
            }
        }
        return kept;
    }

    private boolean corner(int piece) {
        return Math.abs(contour.turnAfter(before(piece))) > Contour.CORNER;
    }

    private boolean longBoth(int piece) {
        double side = LONG * sizes.at(contour.startX(piece), contour.startY(piece));
        return contour.length(piece) > side && contour.length(before(piece)) > side;
    }

    private int before(int piece) {
        return piece == 0 ? contour.size() - 1 : piece - 1;
    }

    /** Adds nodes between two fixed ones so that each side takes an equal share of {@code int ds / size}. */
    private void fill(double from, double to, int least) {
        double[] reach = new double[64];
        double[] share = new double[64];
        int steps = 0;
        double place = from;
        double sum = 0;
        reach[0] = from;
        while (place < to - 1e-12) {
            BoundaryPoint p = contour.along(place);
            double size = sizes.at(p.x(), p.y());
            double step = Math.min(size / 4, to - place);
            BoundaryPoint middle = contour.along(place + step / 2);
            sum += step / sizes.at(middle.x(), middle.y());
            place += step;
            if (++steps == reach.length) {
                reach = Arrays.copyOf(reach, 2 * steps);
                share = Arrays.copyOf(share, 2 * steps);
            }
            reach[steps] = place;
            share[steps] = sum;
        }
        int sides = Math.max(least, (int) Math.round(sum));
        int at = 0;
        for (int k = 1; k < sides; k++) {
            double wanted = sum * k / sides;
            while (share[at + 1] < wanted) {
                at++;
            }
            double part = (wanted - share[at]) / (share[at + 1] - share[at]);
            add(reach[at] + part * (reach[at + 1] - reach[at]));
        }
    }

    private void add(double along) {
        if (count == s.length) {
            s = Arrays.copyOf(s, 2 * count);
        }
        s[count++] = along;
    }
}
