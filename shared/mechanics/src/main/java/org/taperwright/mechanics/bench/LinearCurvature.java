package org.taperwright.mechanics.bench;

/** Hooke's law in bending: {@code kappa = M / (E I)}, with {@code 1 / (E I)} given at each node, 1/(N mm^2). */
record LinearCurvature(double[] compliance) implements CurvatureLaw {
    @Override
    public double curvature(int node, double momentNmm) {
        return compliance[node] * momentNmm;
    }

    @Override
    public double compliance(int node, double momentNmm) {
        return compliance[node];
    }
}
