package org.taperwright.mechanics.properties.torsion;

import java.util.Optional;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.CornerOrder;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;

/**
 * Prandtl's stress function on a section by finite elements: {@code -lap phi = 2} inside, {@code phi = 0} on the outline.
 * {@code J = 2 int phi dA}; the shear stress for a torque T is {@code |grad phi| T / J}, greatest on the outline.
 */
public final class TorsionSolution {
    private final SectionMesh mesh;
    private final double[] phi;
    private final double constant;
    private final double area;

    private TorsionSolution(SectionMesh mesh, double[] phi, double constant, double area) {
        this.mesh = mesh;
        this.phi = phi;
        this.constant = constant;
        this.area = area;
    }

    /** Solves on a mesh; nothing where its elements are too flat for that. */
    public static Optional<TorsionSolution> on(SectionMesh mesh) {
        int[] order = CornerOrder.of(mesh);
        int[] equation = new int[order.length];
        int[] nodeAt = new int[order.length];
        for (int node = 0; node < order.length; node++) {
            nodeAt[order[node]] = node;
        }
        int unknowns = 0;
        for (int node : nodeAt) {
            equation[node] = mesh.onOutline(node) ? -1 : unknowns++;
        }
        EnvelopeCholesky matrix = new EnvelopeCholesky(lastRows(mesh, equation, unknowns));
        double[] load = new double[unknowns];
        LaplaceElement element = new LaplaceElement();
        double[][] kept = new double[mesh.elements()][];
        double constant = 0;
        double area = 0;
        for (int e = 0; e < mesh.elements(); e++) {
            element.form(mesh, e);
            area += element.area();
            constant += element.condense();
            kept[e] = element.innerRow();
            int[] nodes = mesh.element(e);
            for (int a = 0; a < 9; a++) {
                int row = equation[nodes[a]];
                if (row >= 0) {
                    load[row] += element.load(a);
                    for (int b = 0; b <= a; b++) {
                        int col = equation[nodes[b]];
                        if (col >= 0) {
                            matrix.add(row, col, element.stiffness(a, b));
                        }
                    }
                }
            }
        }
        if (!matrix.factorise()) {
            return Optional.empty();
        }
        double[] solution = load.clone();
        matrix.solve(solution);
        for (int i = 0; i < unknowns; i++) {
            constant += load[i] * solution[i];
        }
        double[] phi = new double[mesh.nodes()];
        for (int node = 0; node < equation.length; node++) {
            phi[node] = equation[node] < 0 ? 0 : solution[equation[node]];
        }
        for (int e = 0; e < mesh.elements(); e++) {
            int[] nodes = mesh.element(e);
            double inner = kept[e][9];
            for (int a = 0; a < 9; a++) {
                inner -= kept[e][a] * phi[nodes[a]];
            }
            phi[nodes[9]] = inner;
        }
        return Optional.of(new TorsionSolution(mesh, phi, constant, area));
    }

    private static int[] lastRows(SectionMesh mesh, int[] equation, int unknowns) {
        int[] last = new int[unknowns];
        for (int e = 0; e < mesh.elements(); e++) {
            int[] nodes = mesh.element(e);
            int highest = -1;
            for (int a = 0; a < 9; a++) {
                highest = Math.max(highest, equation[nodes[a]]);
            }
            for (int a = 0; a < 9; a++) {
                int row = equation[nodes[a]];
                if (row >= 0) {
                    last[row] = Math.max(last[row], highest);
                }
            }
        }
        return last;
    }

    /** J, in d^4. */
    public double constant() {
        return constant;
    }

    /** The mesh's own area, in d^2: a little off where its sides run over blunt corners. */
    public double area() {
        return area;
    }

    /** The c of {@code tau_max = c T / d^3}: the greatest gradient across the outline over J. */
    public double peakShear() {
        OutlineFlux outline = new OutlineFlux(mesh);
        double[] flux = outline.of(reactions(outline));
        double greatest = 0;
        for (int k = 0; k < mesh.outlineSides(); k++) {
            int[] rows = outline.equations(k);
            for (int part = 0; part < 6; part++) {
                double[] n = OutlineFlux.cubic(part / 6.0);
                double q = 0;
                for (int i = 0; i < 4; i++) {
                    q += n[i] * flux[rows[i]];
                }
                greatest = Math.max(greatest, q);
            }
        }
        return greatest / constant;
    }

    private double[] reactions(OutlineFlux outline) {
        double[] reaction = new double[outline.size()];
        LaplaceElement element = new LaplaceElement();
        for (int e = 0; e < mesh.elements(); e++) {
            int[] nodes = mesh.element(e);
            if (touches(nodes)) {
                element.form(mesh, e);
                for (int a = 0; a < 9; a++) {
                    int row = outline.equation(nodes[a]);
                    if (row >= 0) {
                        reaction[row] += element.load(a) - element.times(a, nodes, phi);
                    }
                }
            }
        }
        return reaction;
    }

    private boolean touches(int[] nodes) {
        return mesh.onOutline(nodes[0]) || mesh.onOutline(nodes[1]) || mesh.onOutline(nodes[2]);
    }
}
