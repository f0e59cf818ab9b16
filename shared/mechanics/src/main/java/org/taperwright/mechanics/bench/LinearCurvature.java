package org.taperwright.mechanics.bench;

/** Hooke's law in bending: {@code kappa = M / (E I)}, with {@code 1 / (E I)} given at each node, 1/(N mm^2). */
record LinearCurvature(double[] compliance) implements CurvatureLaw {
    @Override
    public void at(int node, double momentNmm, double[] answer) {
        answer[0] = compliance[node] * momentNmm;
        answer[1] = compliance[node];
    }
}
