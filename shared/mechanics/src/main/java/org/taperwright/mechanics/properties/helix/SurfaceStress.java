package org.taperwright.mechanics.properties.helix;

import java.util.List;
import org.taperwright.mechanics.properties.mesh.CubicSide;
import org.taperwright.mechanics.properties.mesh.CubicTriangle;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.Equations;

/**
 * Stress on the surface of a twisted bar, where it is greatest. The surface is free, so the stress lies in its tangent
 * plane and follows from the strains along it, which need no derivative into the material: along the section's tangent p
 * and along the helix {@code h = e_z + t (-Y, X, 0)}, with {@code c = h . p} and {@code q^2 = h^2 - c^2},
 *
 * <pre>e_22 = (e_hh - 2 c e_ph + c^2 e_pp) / q^2        e_12 = (e_ph - c e_pp) / q        s_zz = s_22 / q^2</pre>
 *
 * and plane stress.
 */
final class SurfaceStress {
    private static final int PER_SIDE = 6;
    private static final int PARTS = 6;

    private final int harmonic;
    private final double poisson;
    private final int points;
    private final double[] x;
    private final double[] y;
    private final double[] tangentX;
    private final double[] tangentY;
    /** By point: U, V, W and their derivatives along the tangent, of each displacement in turn. */
    private final Field[] parts;

    /**
     * Greatest stresses over the surface and over a turn.
     *
     * @param axial greatest |s_zz|
     * @param vonMises greatest von Mises stress
     */
    record Peak(double axial, double vonMises) {}

    SurfaceStress(SectionMesh mesh, Equations equations, List<Field> displacements, int harmonic, double poisson) {
        this.harmonic = harmonic;
        this.poisson = poisson;
        points = mesh.outlineSides() * (PER_SIDE + 1);
        x = new double[points];
        y = new double[points];
        tangentX = new double[points];
        tangentY = new double[points];
        parts = new Field[points];
        for (int side = 0; side < mesh.outlineSides(); side++) {
            int[] local = CubicTriangle.side(mesh.outlineSide(side));
            int[] element = mesh.element(mesh.outlineElement(side));
            int[] nodes = {element[local[0]], element[local[1]], element[local[2]], element[local[3]]};
            for (int k = 0; k <= PER_SIDE; k++) {
                place(side * (PER_SIDE + 1) + k, (double) k / PER_SIDE, nodes, mesh, equations, displacements);
            }
        }
    }

    private void place(
            int point, double share, int[] nodes, SectionMesh mesh, Equations equations, List<Field> displacements) {
        double[] value = CubicSide.value(share);
        double[] slope = CubicSide.slope(share);
        double dx = 0;
        double dy = 0;
        for (int i = 0; i < 4; i++) {
            x[point] += value[i] * mesh.x(nodes[i]);
            y[point] += value[i] * mesh.y(nodes[i]);
            dx += slope[i] * mesh.x(nodes[i]);
            dy += slope[i] * mesh.y(nodes[i]);
        }
        double stretch = Math.hypot(dx, dy);
        tangentX[point] = dx / stretch;
        tangentY[point] = dy / stretch;
        parts[point] = Field.zero(PARTS * displacements.size(), harmonic > 0);
        for (int d = 0; d < displacements.size(); d++) {
            for (int component = 0; component < 3; component++) {
                for (int i = 0; i < 4; i++) {
                    int row = equations.of(nodes[i], component);
                    if (row >= 0) {
                        put(parts[point], PARTS * d + component, value[i], displacements.get(d), row);
                        put(parts[point], PARTS * d + 3 + component, slope[i] / stretch, displacements.get(d), row);
                    }
                }
            }
        }
    }

    private static void put(Field part, int at, double factor, Field displacement, int row) {
        part.re()[at] += factor * displacement.re()[row];
        if (part.complex()) {
            part.im()[at] += factor * displacement.im(row);
        }
    }

    /** The greatest stresses at a twist, for Young's modulus 1. */
    Peak peak(double t, ReducedScrew.State state) {
        double axial = 0;
        double vonMises = 0;
        for (int point = 0; point < points; point++) {
            Field sum = Field.zero(PARTS, harmonic > 0);
            for (int d = 0; d < state.shares().size(); d++) {
                addShare(
                        sum,
                        parts[point],
                        PARTS * d,
                        state.shares().re()[d],
                        state.shares().im(d));
            }
            double[] re = stress(point, t, state.strain().re(), sum.re(), sum.im(), 1);
            double[] im =
                    harmonic > 0 ? stress(point, t, imaginary(state.strain()), sum.im(), sum.re(), -1) : new double[4];
            axial = Math.max(axial, Math.hypot(re[3], im[3]));
            vonMises = Math.max(vonMises, mises(re, im));
        }
        return new Peak(axial, Math.sqrt(vonMises));
    }

    private static double[] imaginary(Field strain) {
        return strain.complex() ? strain.im() : new double[Screw.MACROS];
    }

    private static void addShare(Field sum, Field part, int from, double re, double im) {
        for (int i = 0; i < PARTS; i++) {
            double pr = part.re()[from + i];
            double pi = part.im(from + i);
            sum.re()[i] += re * pr - im * pi;
            if (sum.complex()) {
                sum.im()[i] += re * pi + im * pr;
            }
        }
    }

    /**
     * Tangential stresses 11, 22, 12 and the axial one: the real part, or with the parts exchanged and sign -1 the
     * imaginary one, since i times a number has the real part -im and the imaginary part re.
     */
    private double[] stress(int point, double t, double[] strain, double[] own, double[] other, double sign) {
        double px = x[point];
        double py = y[point];
        double tx = tangentX[point];
        double ty = tangentY[point];
        double rate = -sign * harmonic * t;
        double alongX = (harmonic > 0 ? rate * other[0] : 0) - t * own[1];
        double alongY = (harmonic > 0 ? rate * other[1] : 0) + t * own[0];
        double alongZ = harmonic > 0 ? rate * other[2] : 0;
        double pp = tx * own[3] + ty * own[4];
        double hh = t * (px * alongY - py * alongX)
                + alongZ
                + strain[0]
                + strain[1] * px
                + strain[2] * py
                + strain[3] * t * (px * px + py * py);
        double ph =
                (t * (px * own[4] - py * own[3]) + own[5] + tx * alongX + ty * alongY + strain[3] * (px * ty - py * tx))
                        / 2;
        double c = t * (px * ty - py * tx);
        double square = 1 + t * t * (px * px + py * py) - c * c;
        double e22 = (hh - 2 * c * ph + c * c * pp) / square;
        double e12 = (ph - c * pp) / Math.sqrt(square);
        double plane = 1 / (1 - poisson * poisson);
        double s22 = plane * (e22 + poisson * pp);
        return new double[] {plane * (pp + poisson * e22), s22, e12 / (1 + poisson), s22 / square};
    }

    /** Greatest square of the von Mises stress while the stress goes round from its real to its imaginary part. */
    private static double mises(double[] re, double[] im) {
        double a = form(re, re);
        double b = form(im, im);
        double c = form(re, im);
        return (a + b) / 2 + Math.hypot((a - b) / 2, c);
    }

    private static double form(double[] s, double[] r) {
        return s[0] * r[0] + s[1] * r[1] - (s[0] * r[1] + s[1] * r[0]) / 2 + 3 * s[2] * r[2];
    }
}
