package org.taperwright.mechanics.properties.mesh;

/**
 * The map from the reference triangle to one element at one quadrature point: place, weight and gradients of the shape
 * functions. Reused from point to point; not safe for use by two threads.
 */
public final class ElementMap {
    private final double[] gradientX = new double[CubicTriangle.NODES];
    private final double[] gradientY = new double[CubicTriangle.NODES];
    private double x;
    private double y;
    private double weight;

    /** Goes to a quadrature point of an element. */
    public void moveTo(SectionMesh mesh, int e, int q) {
        int[] nodes = mesh.element(e);
        double[] value = CubicTriangle.value(q);
        double[] byXi = CubicTriangle.byXi(q);
        double[] byEta = CubicTriangle.byEta(q);
        double xXi = 0;
        double xEta = 0;
        double yXi = 0;
        double yEta = 0;
        x = 0;
        y = 0;
        for (int a = 0; a < CubicTriangle.NODES; a++) {
            double px = mesh.x(nodes[a]);
            double py = mesh.y(nodes[a]);
            x += value[a] * px;
            y += value[a] * py;
            xXi += byXi[a] * px;
            xEta += byEta[a] * px;
            yXi += byXi[a] * py;
            yEta += byEta[a] * py;
        }
        double det = xXi * yEta - xEta * yXi;
        weight = CubicTriangle.weight(q) * det;
        for (int a = 0; a < CubicTriangle.NODES; a++) {
            gradientX[a] = (byXi[a] * yEta - byEta[a] * yXi) / det;
            gradientY[a] = (byEta[a] * xXi - byXi[a] * xEta) / det;
        }
    }

    /** The point's place, x. */
    public double x() {
        return x;
    }

    /** The point's place, y. */
    public double y() {
        return y;
    }

    /** The area that the point stands for. */
    public double weight() {
        return weight;
    }

    /** Derivatives of the shape functions by x; read only, until the next move. */
    public double[] gradientX() {
        return gradientX;
    }

    /** Derivatives of the shape functions by y; read only, until the next move. */
    public double[] gradientY() {
        return gradientY;
    }
}
