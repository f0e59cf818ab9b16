package org.taperwright.mechanics.properties.mesh;

import java.util.Arrays;
import org.taperwright.mechanics.properties.contour.BoundaryPoint;
import org.taperwright.mechanics.properties.contour.Contour;

/**
 * The corner nodes of a mesh on the outline, in order, with the places a third and two thirds of the way to the next:
 * all at corners of the outline, the rest spread by the size field.
 */
final class BoundaryNodes {
    private static final double LONG = 0.6;

    private final Contour contour;
    private final SizeField sizes;
    private double[] s = new double[64];
    private int count;

    BoundaryNodes(Contour contour, SizeField sizes) {
        this.contour = contour;
        this.sizes = sizes;
        spread();
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

    private void spread() {
        int first = firstFixed();
        double from = contour.begins(first);
        add(from);
        for (int k = 1; k <= contour.size(); k++) {
            int piece = (first + k) % contour.size();
            double to = contour.begins(piece) + (first + k >= contour.size() ? contour.perimeter() : 0);
            boolean last = k == contour.size();
            if (last || fixed(piece)) {
                fill(from, to, k == contour.size() && count == 1 ? 4 : 1);
                if (!last) {
                    add(to);
                }
                from = to;
            }
        }
        if (first > 0) {
            wrap();
        }
    }

    private int firstFixed() {
        for (int i = 0; i < contour.size(); i++) {
            if (fixed(i)) {
                return i;
            }
        }
        return 0;
    }

    /** Whether a node must stand where a piece begins: at a corner, or where two long pieces meet. */
    private boolean fixed(int piece) {
        int before = piece == 0 ? contour.size() - 1 : piece - 1;
        if (Math.abs(contour.turnAfter(before)) > Contour.CORNER) {
            return true;
        }
        double side = LONG * sizes.at(contour.startX(piece), contour.startY(piece));
        return contour.length(piece) > side && contour.length(before) > side;
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

    /** Brings the places back to one round, in rising order. */
    private void wrap() {
        double[] turned = new double[count];
        int k = 0;
        int wrapped = 0;
        while (wrapped < count && s[wrapped] < contour.perimeter()) {
            wrapped++;
        }
        for (int i = wrapped; i < count; i++) {
            turned[k++] = s[i] - contour.perimeter();
        }
        for (int i = 0; i < wrapped; i++) {
            turned[k++] = s[i];
        }
        s = turned;
    }
}
