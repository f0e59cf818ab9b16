package org.taperwright.mechanics.properties.helix;

import org.taperwright.mechanics.properties.mesh.CubicTriangle;
import org.taperwright.mechanics.properties.mesh.ElementMap;
import org.taperwright.mechanics.properties.mesh.SectionMesh;

/**
 * Integrals over one element of products of its shape functions N, their derivatives by X and Y and
 * {@code R N = Y N_X - X N_Y}; entry {@code 10 a + b} holds the product of a's first and b's second factor. All element
 * matrices, for any twist and harmonic, are sums of these.
 */
final class ElementIntegrals {
    static final int N = CubicTriangle.NODES;

    final double[] xx = new double[N * N];
    final double[] xy = new double[N * N];
    final double[] yy = new double[N * N];
    final double[] xr = new double[N * N];
    final double[] yr = new double[N * N];
    final double[] xn = new double[N * N];
    final double[] yn = new double[N * N];
    final double[] rr = new double[N * N];
    final double[] rn = new double[N * N];
    final double[] nn = new double[N * N];
    /** By macroscopic function 1, X, Y: {@code int g N_X}, and so on for N_Y, R N and N. */
    final double[][] gx = new double[3][N];

    final double[][] gy = new double[3][N];
    final double[][] gr = new double[3][N];
    final double[][] gn = new double[3][N];
    /** {@code int g g'} of 1, X, Y, as 1, X, Y, XX, XY, YY. */
    final double[] moments = new double[6];

    ElementIntegrals(SectionMesh mesh, int e) {
        ElementMap map = new ElementMap();
        double[] r = new double[N];
        for (int q = 0; q < CubicTriangle.POINTS; q++) {
            map.moveTo(mesh, e, q);
            double[] dx = map.gradientX();
            double[] dy = map.gradientY();
            for (int a = 0; a < N; a++) {
                r[a] = map.y() * dx[a] - map.x() * dy[a];
            }
            addPairs(map.weight(), dx, dy, r, CubicTriangle.value(q));
            addLoads(map, r, CubicTriangle.value(q));
        }
    }

    private void addPairs(double weight, double[] dx, double[] dy, double[] r, double[] n) {
        for (int a = 0; a < N; a++) {
            int row = a * N;
            double wx = weight * dx[a];
            double wy = weight * dy[a];
            double wr = weight * r[a];
            double wn = weight * n[a];
            for (int b = 0; b < N; b++) {
                xx[row + b] += wx * dx[b];
                xy[row + b] += wx * dy[b];
                yy[row + b] += wy * dy[b];
                xr[row + b] += wx * r[b];
                yr[row + b] += wy * r[b];
                xn[row + b] += wx * n[b];
                yn[row + b] += wy * n[b];
                rr[row + b] += wr * r[b];
                rn[row + b] += wr * n[b];
                nn[row + b] += wn * n[b];
            }
        }
    }

    private void addLoads(ElementMap map, double[] r, double[] n) {
        double x = map.x();
        double y = map.y();
        double w = map.weight();
        double[] g = {w, w * x, w * y};
        for (int k = 0; k < 3; k++) {
            for (int a = 0; a < N; a++) {
                gx[k][a] += g[k] * map.gradientX()[a];
                gy[k][a] += g[k] * map.gradientY()[a];
                gr[k][a] += g[k] * r[a];
                gn[k][a] += g[k] * n[a];
            }
        }
        moments[0] += w;
        moments[1] += w * x;
        moments[2] += w * y;
        moments[3] += w * x * x;
        moments[4] += w * x * y;
        moments[5] += w * y * y;
    }
}
