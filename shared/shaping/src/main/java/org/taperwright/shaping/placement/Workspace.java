package org.taperwright.shaping.placement;

import java.util.Arrays;

/**
 * Everything the solver writes to, one array for each quantity, by node from the handle (0) to the tip; made once and used for
 * any number of placements with the same number of nodes and directions.
 */
final class Workspace {
    final int nodes;
    final int count;
    final int unknowns;
    double spacing;
    double tilt1;
    double tilt2;
    /** Depth, and the level on the instrument that stands there. */
    final double[] s;

    final double[] x;
    /** Offsets, two for each node; those of the handle stay 0. */
    double[] u;

    double[] trial;
    /** Mean curvature of the canal over each node's cell, and how it changes. */
    final double[] kappa1;

    final double[] kappa2;
    final double[] change1;
    final double[] change2;
    /** The rod at each node: stiffness, radius met by the wall, radius for strain, and how stiffness and radius change. */
    final double[] stiffness;

    final double[] radius;
    final double[] half;
    final double[] stiffnessSlope;
    final double[] radiusSlope;
    /** Curvature of the rod, length of its axis per depth, axial push, lengths that count for bending and for the wall. */
    final double[] curvature;

    final double[] stretch;
    final double[] push;
    final double[] cell;
    final double[] reach;
    /** The wall: springs, support in each direction, its least, the gap that the rod leaves of it, the load that follows, and the share of directions engaged. */
    final double[] spring;

    final double[] support;
    final double[] leastSupport;
    final double[] leastGap;
    final double[] load1;
    final double[] load2;
    final double[] engaged;
    final double[] cos;
    final double[] sin;
    /** Equations: slopes (padded as the band is), band, and answers of the moment law. */
    final double[] slope;

    final double[] step;
    final double[] band;
    final double[] moment = new double[3];

    Workspace(int nodes, int count) {
        this.nodes = nodes;
        this.count = count;
        unknowns = 2 * (nodes - 1);
        s = new double[nodes];
        x = new double[nodes];
        u = new double[2 * nodes];
        trial = new double[2 * nodes];
        kappa1 = new double[nodes];
        kappa2 = new double[nodes];
        change1 = new double[nodes];
        change2 = new double[nodes];
        stiffness = new double[nodes];
        radius = new double[nodes];
        half = new double[nodes];
        stiffnessSlope = new double[nodes];
        radiusSlope = new double[nodes];
        curvature = new double[nodes];
        stretch = new double[nodes];
        push = new double[nodes];
        cell = new double[nodes];
        reach = new double[nodes];
        spring = new double[nodes];
        support = new double[nodes * count];
        leastSupport = new double[nodes];
        leastGap = new double[nodes];
        load1 = new double[nodes];
        load2 = new double[nodes];
        engaged = new double[nodes];
        cos = new double[count];
        sin = new double[count];
        slope = new double[unknowns + BandedCholesky.PAD];
        step = new double[unknowns + BandedCholesky.PAD];
        band = BandedCholesky.band(unknowns);
    }

    void clearEquations() {
        Arrays.fill(slope, 0);
        Arrays.fill(band, BandedCholesky.WIDTH * BandedCholesky.PAD, band.length, 0);
    }

    void swap() {
        double[] before = u;
        u = trial;
        trial = before;
    }
}
