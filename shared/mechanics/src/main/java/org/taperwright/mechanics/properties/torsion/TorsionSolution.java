package org.taperwright.mechanics.properties.torsion;

import java.util.Optional;
import org.taperwright.mechanics.properties.mesh.CubicSide;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.EnvelopeCholesky;
import org.taperwright.mechanics.properties.solve.Equations;

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
        Equations equations = new Equations(mesh, 1, mesh::onOutline);
        EnvelopeCholesky matrix = equations.matrix(false);
        double[] load = new double[equations.count()];
        LaplaceElement element = new LaplaceElement();
        double area = 0;
        for (int e = 0; e < mesh.elements(); e++) {
            element.integrate(mesh, e);
            area += element.area();
            addElement(matrix, load, equations.ofElement(e), element);
        }
        if (!matrix.factorise()) {
            return Optional.empty();
        }
        double[] solution = load.clone();
        matrix.solve(solution, new double[0]);
        double constant = 0;
        for (int i = 0; i < load.length; i++) {
            constant += load[i] * solution[i];
        }
        double[] phi = new double[mesh.nodes()];
        for (int node = 0; node < phi.length; node++) {
            int row = equations.of(node, 0);
            phi[node] = row < 0 ? 0 : solution[row];
        }
        return Optional.of(new TorsionSolution(mesh, phi, constant, area));
    }

    private static void addElement(EnvelopeCholesky matrix, double[] load, int[] rows, LaplaceElement element) {
        for (int a = 0; a < rows.length; a++) {
            if (rows[a] >= 0) {
                load[rows[a]] += element.load(a);
                for (int b = 0; b <= a; b++) {
                    if (rows[b] >= 0) {
                        matrix.add(rows[a], rows[b], element.stiffness(a, b), 0);
                    }
                }
            }
        }
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
                double[] n = CubicSide.value(part / 6.0);
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
                element.integrate(mesh, e);
                for (int a = 0; a < nodes.length; a++) {
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
