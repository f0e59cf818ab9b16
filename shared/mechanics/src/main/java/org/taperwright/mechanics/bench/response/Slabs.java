package org.taperwright.mechanics.bench.response;

import java.util.Arrays;
import org.taperwright.mechanics.section.Outline;

/**
 * What lies beyond a line across a section: with eta the height over the axis in one direction and xi along the line,
 * for every height h
 *
 * <pre>A(h) = int dA,  S(h) = int eta dA,  I(h) = int eta^2 dA,  X(h) = int xi dA,  P(h) = int xi eta dA    over eta &gt; h</pre>
 *
 * Exact along the outline at the nodes (Green's theorem: a cut at constant eta adds nothing to {@code contour integrals of
 * f d eta}); between nodes by cubics through the values and the exact slopes ({@code A' = -w}, the width, and so on).
 */
final class Slabs {
    static final int AREA = 0;
    static final int FIRST = 1;
    static final int SECOND = 2;
    static final int ACROSS = 3;
    static final int PRODUCT = 4;
    static final int COUNT = 5;

    private final double[] node;
    /** Integrals beyond each node, {@code COUNT} to a node. */
    private final double[] beyond;
    /** Their slopes just above the lower and just below the upper end of each panel, twice {@code COUNT} to a panel. */
    private final double[] slope;

    private final double panelsPerHeight;
    private final int[] firstPanel;

    private Slabs(double[] node, double[] beyond, double[] slope) {
        this.node = node;
        this.beyond = beyond;
        this.slope = slope;
        int buckets = 2 * node.length;
        this.panelsPerHeight = buckets / (node[node.length - 1] - node[0]);
        this.firstPanel = new int[buckets + 1];
        int panel = 0;
        for (int bucket = 0; bucket <= buckets; bucket++) {
            double height = node[0] + bucket / panelsPerHeight;
            while (panel < node.length - 2 && node[panel + 1] <= height) {
                panel++;
            }
            firstPanel[bucket] = panel;
        }
    }

    /** The slabs of an outline for a bending axis at an angle from x, rad. */
    static Slabs of(Outline outline, double axis) {
        SlabPieces pieces = SlabPieces.of(outline, axis);
        double[] node = pieces.nodes();
        int panels = node.length - 1;
        double[] within = new double[panels * COUNT];
        double[] slope = new double[panels * 2 * COUNT];
        pieces.integrate(node, within, slope);
        double[] beyond = new double[node.length * COUNT];
        for (int i = panels - 1; i >= 0; i--) {
            for (int k = 0; k < COUNT; k++) {
                beyond[i * COUNT + k] = beyond[(i + 1) * COUNT + k] + within[i * COUNT + k];
            }
        }
        return new Slabs(node, beyond, slope);
    }

    /** Least height of the section. */
    double bottom() {
        return node[0];
    }

    /** Greatest height of the section. */
    double top() {
        return node[node.length - 1];
    }

    /** Integrals over the whole section. */
    double whole(int kind) {
        return beyond[kind];
    }

    /** Writes the integrals beyond a height. */
    void beyond(double height, double[] out) {
        if (height >= top()) {
            Arrays.fill(out, 0, COUNT, 0);
        } else if (height <= bottom()) {
            System.arraycopy(beyond, 0, out, 0, COUNT);
        } else {
            interpolate(height, out);
        }
    }

    private void interpolate(double height, double[] out) {
        int i = firstPanel[(int) ((height - node[0]) * panelsPerHeight)];
        while (i < node.length - 2 && node[i + 1] <= height) {
            i++;
        }
        double width = node[i + 1] - node[i];
        double t = (height - node[i]) / width;
        double u = 1 - t;
        double low = u * u * (1 + 2 * t);
        double lowSlope = width * u * u * t;
        double highSlope = -width * t * t * u;
        for (int k = 0; k < COUNT; k++) {
            double a = beyond[i * COUNT + k];
            double b = beyond[(i + 1) * COUNT + k];
            out[k] = b
                    + low * (a - b)
                    + lowSlope * slope[2 * i * COUNT + k]
                    + highSlope * slope[(2 * i + 1) * COUNT + k];
        }
    }
}
