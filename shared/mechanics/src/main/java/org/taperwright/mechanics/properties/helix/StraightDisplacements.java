package org.taperwright.mechanics.properties.helix;

import java.util.List;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;
import org.taperwright.mechanics.properties.solve.Equations;

/**
 * What the section of a straight bar does: it shrinks crosswise under extension and bending by Poisson's ratio, which is
 * known exactly, and warps under torsion by Saint-Venant's function, which solves {@code int grad w . grad v = int R v}.
 */
final class StraightDisplacements {
    private final SectionMesh mesh;
    private final Equations equations;
    private final int pivot;
    private final int arm;

    /**
     * Displacements of a mesh.
     *
     * @param pivot corner at which all three components are held
     * @param arm corner at which the second component is held
     */
    StraightDisplacements(SectionMesh mesh, Equations equations, int pivot, int arm) {
        this.mesh = mesh;
        this.equations = equations;
        this.pivot = pivot;
        this.arm = arm;
    }

    /** For extension, the two curvatures and twist. */
    List<Field> all(ElementIntegrals[] integrals, double poisson) {
        return List.of(
                crosswise((x, y) -> -poisson * x, (x, y) -> -poisson * y),
                crosswise((x, y) -> -poisson * (x * x - y * y) / 2, (x, y) -> -poisson * x * y),
                crosswise((x, y) -> -poisson * x * y, (x, y) -> -poisson * (y * y - x * x) / 2),
                warping(integrals));
    }

    private interface OfPlace {
        double at(double x, double y);
    }

    /** A displacement in the section's plane less the rigid motion that the held nodes would see. */
    private Field crosswise(OfPlace u, OfPlace v) {
        double px = mesh.x(pivot);
        double py = mesh.y(pivot);
        double u0 = u.at(px, py);
        double v0 = v.at(px, py);
        double turn = (v.at(mesh.x(arm), mesh.y(arm)) - v0) / (mesh.x(arm) - px);
        Field field = Field.zero(equations.count(), false);
        for (int node = 0; node < mesh.nodes(); node++) {
            double x = mesh.x(node);
            double y = mesh.y(node);
            put(field, equations.of(node, 0), u.at(x, y) - u0 + turn * (y - py));
            put(field, equations.of(node, 1), v.at(x, y) - v0 - turn * (x - px));
        }
        return field;
    }

    private Field warping(ElementIntegrals[] integrals) {
        Equations scalar = new Equations(mesh, 1, node -> node == pivot);
        EnvelopeCholesky matrix = scalar.matrix(false);
        double[] right = new double[scalar.count()];
        for (int e = 0; e < integrals.length; e++) {
            int[] rows = scalar.ofElement(e);
            for (int a = 0; a < rows.length; a++) {
                if (rows[a] >= 0) {
                    right[rows[a]] += integrals[e].gr[0][a];
                    for (int b = 0; b <= a; b++) {
                        int at = a * ElementIntegrals.N + b;
                        if (rows[b] >= 0) {
                            matrix.add(rows[a], rows[b], integrals[e].xx[at] + integrals[e].yy[at], 0);
                        }
                    }
                }
            }
        }
        Field field = Field.zero(equations.count(), false);
        if (matrix.factorise()) {
            matrix.solve(right, new double[0]);
            for (int node = 0; node < mesh.nodes(); node++) {
                put(field, equations.of(node, 2), node == pivot ? 0 : right[scalar.of(node, 0)]);
            }
        }
        return field;
    }

    private static void put(Field field, int row, double value) {
        if (row >= 0) {
            field.re()[row] = value;
        }
    }
}
