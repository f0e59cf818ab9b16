package org.taperwright.shaping.placement;

/**
 * An instrument as it lies in a canal, at nodes from the handle to the tip.
 *
 * <p>Computed, given the geometry and the stiffness: offsets, curvature, strain, net forces. Where the least gap is negative the
 * instrument is wedged: the sum of loads and the wall's pressure are then no forces of use, only the net force of a zone is.
 */
public final class Placement {
    private final double[] depth;
    private final double[] level;
    private final double[] offset;
    private final double[] curvature;
    private final double[] radius;
    private final double[] wallRadius;
    private final double[] load;
    private final double[] engaged;
    private final double[] reach;
    private final double[] leastGap;
    private final double bendingEnergyMj;
    private final double wallEnergyMj;
    private final int iterations;
    private final boolean settled;

    private Placement(Workspace w, double bendingEnergyMj, double wallEnergyMj, int iterations, boolean settled) {
        depth = w.s.clone();
        level = w.x.clone();
        offset = w.u.clone();
        curvature = w.curvature.clone();
        radius = w.half.clone();
        wallRadius = w.radius.clone();
        load = new double[2 * w.nodes];
        for (int i = 0; i < w.nodes; i++) {
            load[2 * i] = w.load1[i];
            load[2 * i + 1] = w.load2[i];
        }
        engaged = w.engaged.clone();
        reach = w.reach.clone();
        leastGap = w.leastGap.clone();
        this.bendingEnergyMj = bendingEnergyMj;
        this.wallEnergyMj = wallEnergyMj;
        this.iterations = iterations;
        this.settled = settled;
    }

    static Placement of(Workspace w, double bendingEnergyMj, double wallEnergyMj, int iterations, boolean settled) {
        return new Placement(w, bendingEnergyMj, wallEnergyMj, iterations, settled);
    }

    /** Number of nodes. */
    public int nodes() {
        return depth.length;
    }

    /** Depth of a node from the orifice, mm; negative in the access. */
    public double depthMm(int node) {
        return depth[node];
    }

    /** Level on the instrument at a node, mm from the tip. */
    public double levelMm(int node) {
        return level[node];
    }

    /** Offset from the canal's axis towards azimuth 0, mm. */
    public double firstMm(int node) {
        return offset[2 * node];
    }

    /** Offset from the canal's axis towards azimuth 90 degrees, mm. */
    public double secondMm(int node) {
        return offset[2 * node + 1];
    }

    /** Curvature of the instrument at a node, 1/mm; none at the tip. */
    public double curvature(int node) {
        return curvature[node];
    }

    /** Strain of the outermost fibre at a node, {@code |k| d / 2}. */
    public double strain(int node) {
        return curvature[node] * radius[node];
    }

    /** Radius that the wall meets at a node, mm. */
    public double radiusMm(int node) {
        return wallRadius[node];
    }

    /** Load on the wall towards azimuth 0, N/mm. */
    public double loadFirst(int node) {
        return load[2 * node];
    }

    /** Load on the wall towards azimuth 90 degrees, N/mm. */
    public double loadSecond(int node) {
        return load[2 * node + 1];
    }

    /** Size of the load on the wall, N/mm. */
    public double load(int node) {
        return Math.hypot(load[2 * node], load[2 * node + 1]);
    }

    /** Share of all directions in which the instrument sinks into the wall, by more than 0.1 micrometre. */
    public double engaged(int node) {
        return engaged[node];
    }

    /** Length of axis that a node stands for, mm. */
    public double reachMm(int node) {
        return reach[node];
    }

    /** Sum of the sizes of all loads, N. */
    public double totalForceN() {
        double sum = 0;
        for (int i = 0; i < nodes(); i++) {
            sum += load(i) * reach[i];
        }
        return sum;
    }

    /** Least room between wall and instrument within the canal, were it on the axis, mm; negative when wedged. */
    public double leastGapMm() {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < nodes(); i++) {
            if (depth[i] >= -1e-9) {
                least = Math.min(least, leastGap[i]);
            }
        }
        return least;
    }

    /** The node of the greatest curvature. */
    public int mostCurvedNode() {
        int most = 0;
        for (int i = 1; i < nodes(); i++) {
            most = curvature[i] > curvature[most] ? i : most;
        }
        return most;
    }

    /** The node of the greatest strain. */
    public int mostStrainedNode() {
        int most = 0;
        for (int i = 1; i < nodes(); i++) {
            most = strain(i) > strain(most) ? i : most;
        }
        return most;
    }

    /** Energy of bending, mJ. */
    public double bendingEnergyMj() {
        return bendingEnergyMj;
    }

    /** Energy in the wall, mJ. */
    public double wallEnergyMj() {
        return wallEnergyMj;
    }

    /** Steps taken in all passes. */
    public int iterations() {
        return iterations;
    }

    /** Whether it settled within its bounds; if not, its numbers are those of the last step. */
    public boolean settled() {
        return settled;
    }
}
