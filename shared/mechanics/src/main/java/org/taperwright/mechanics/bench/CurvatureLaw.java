package org.taperwright.mechanics.bench;

/**
 * Curvature that a bending moment makes at a node of a rod: {@code kappa = kappa(M; x)}, rising with M. Nodes are those
 * of a {@link RodGrid}.
 */
interface CurvatureLaw {
    /**
     * Writes the curvature, 1/mm, and its derivative by the moment, 1/(N mm^2), under a moment in N mm.
     *
     * @param answer two places
     */
    void at(int node, double momentNmm, double[] answer);
}
