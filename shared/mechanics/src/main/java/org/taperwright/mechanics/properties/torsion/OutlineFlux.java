package org.taperwright.mechanics.properties.torsion;

import org.taperwright.mechanics.properties.mesh.CubicSide;
import org.taperwright.mechanics.properties.mesh.CubicTriangle;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;

/**
 * The gradient of the stress function across the outline, recovered from the nodal reactions: q such that
 * {@code int_outline q N_a ds = int (2 N_a - grad phi . grad N_a) dA} for every outline node a. It converges much faster
 * than the gradient inside the elements (the consistent flux; G. F. Carey, 1982).
 */
final class OutlineFlux {
    private static final double[] GAUSS = {
        0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970263
    };
    private static final double[] WEIGHT = {
        0.17392742256872692, 0.3260725774312731, 0.3260725774312731, 0.17392742256872692
    };

    private final SectionMesh mesh;
    private final int size;
    private final int[] equation;

    OutlineFlux(SectionMesh mesh) {
        this.mesh = mesh;
        size = 3 * mesh.outlineSides();
        equation = new int[mesh.nodes()];
        java.util.Arrays.fill(equation, -1);
        for (int k = 0; k < mesh.outlineSides(); k++) {
            int[] nodes = mesh.element(mesh.outlineElement(k));
            int[] side = CubicTriangle.side(mesh.outlineSide(k));
            for (int i = 0; i < 3; i++) {
                equation[nodes[side[i]]] = folded(3 * k + i);
            }
        }
    }

    /** Folds the ring so that its two halves lie side by side and neighbours stay close. */
    private int folded(int place) {
        return 2 * place < size ? 2 * place : 2 * (size - place) - 1;
    }

    /** The flux at the outline's nodes for nodal reactions, both in this class's equation order. */
    double[] of(double[] reaction) {
        int[] last = new int[size];
        for (int k = 0; k < mesh.outlineSides(); k++) {
            int[] side = equations(k);
            int highest = Math.max(Math.max(side[0], side[1]), Math.max(side[2], side[3]));
            for (int row : side) {
                last[row] = Math.max(last[row], highest);
            }
        }
        EnvelopeCholesky matrix = new EnvelopeCholesky(last, false);
        for (int k = 0; k < mesh.outlineSides(); k++) {
            addMass(matrix, k);
        }
        if (!matrix.factorise()) {
            throw new IllegalStateException("a section's outline has a side of no length");
        }
        double[] flux = reaction.clone();
        matrix.solve(flux, new double[0]);
        return flux;
    }

    int size() {
        return size;
    }

    /** The equation of an outline node, or -1 for another node. */
    int equation(int node) {
        return equation[node];
    }

    /** The four equations along an outline side. */
    int[] equations(int k) {
        int[] nodes = mesh.element(mesh.outlineElement(k));
        int[] side = CubicTriangle.side(mesh.outlineSide(k));
        return new int[] {
            equation[nodes[side[0]]], equation[nodes[side[1]]], equation[nodes[side[2]]], equation[nodes[side[3]]]
        };
    }

    private void addMass(EnvelopeCholesky matrix, int k) {
        int[] nodes = mesh.element(mesh.outlineElement(k));
        int[] side = CubicTriangle.side(mesh.outlineSide(k));
        int[] rows = equations(k);
        for (int g = 0; g < GAUSS.length; g++) {
            double[] n = CubicSide.value(GAUSS[g]);
            double[] slope = CubicSide.slope(GAUSS[g]);
            double dx = 0;
            double dy = 0;
            for (int i = 0; i < 4; i++) {
                dx += slope[i] * mesh.x(nodes[side[i]]);
                dy += slope[i] * mesh.y(nodes[side[i]]);
            }
            double weight = WEIGHT[g] * Math.hypot(dx, dy);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j <= i; j++) {
                    matrix.add(rows[i], rows[j], weight * n[i] * n[j], 0);
                }
            }
        }
    }
}
