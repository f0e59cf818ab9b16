package org.taperwright.mechanics.bench;

/**
 * Curvature that a bending moment makes at a node of a rod: {@code kappa = kappa(M; x)}, rising with M. Nodes are those
 * of a {@link RodGrid}.
 */
interface CurvatureLaw {
    /** Curvature, 1/mm, under a moment in N mm. */
    double curvature(int node, double momentNmm);

    /** Its derivative by the moment, 1/(N mm^2). */
    double compliance(int node, double momentNmm);
}
