package org.taperwright.mechanics.properties.solve;

import java.util.function.IntPredicate;
import org.taperwright.mechanics.properties.mesh.CubicTriangle;
import org.taperwright.mechanics.properties.mesh.SectionMesh;

/** Numbers the unknowns at a mesh's nodes so that a matrix of them is narrow; some may be held at zero. */
public final class Equations {
    private final SectionMesh mesh;
    private final int perNode;
    private final int[] number;
    private final int count;

    /**
     * Numbers the unknowns.
     *
     * @param perNode unknowns at each node; unknown i of a node is {@code perNode node + i}
     * @param held which unknowns are zero and get no equation
     */
    public Equations(SectionMesh mesh, int perNode, IntPredicate held) {
        this.mesh = mesh;
        this.perNode = perNode;
        int[] order = NodeOrder.of(mesh);
        int[] nodeAt = new int[order.length];
        for (int node = 0; node < order.length; node++) {
            nodeAt[order[node]] = node;
        }
        number = new int[perNode * order.length];
        int next = 0;
        for (int node : nodeAt) {
            for (int i = 0; i < perNode; i++) {
                int unknown = perNode * node + i;
                number[unknown] = held.test(unknown) ? -1 : next++;
            }
        }
        count = next;
    }

    /** Number of equations. */
    public int count() {
        return count;
    }

    /** The equation of an unknown, or -1 where it is held. */
    public int of(int node, int i) {
        return number[perNode * node + i];
    }

    /** The equations of an element, node by node. */
    public int[] ofElement(int e) {
        int[] nodes = mesh.element(e);
        int[] equations = new int[CubicTriangle.NODES * perNode];
        for (int a = 0; a < CubicTriangle.NODES; a++) {
            System.arraycopy(number, perNode * nodes[a], equations, perNode * a, perNode);
        }
        return equations;
    }

    /** An empty matrix for these equations. */
    public EnvelopeCholesky matrix(boolean complex) {
        int[] last = new int[count];
        for (int e = 0; e < mesh.elements(); e++) {
            int[] equations = ofElement(e);
            int highest = -1;
            for (int row : equations) {
                highest = Math.max(highest, row);
            }
            for (int row : equations) {
                if (row >= 0) {
                    last[row] = Math.max(last[row], highest);
                }
            }
        }
        return new EnvelopeCholesky(last, complex);
    }
}
