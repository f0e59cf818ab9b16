package org.taperwright.mechanics.properties.mesh;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.properties.contour.BoundaryPoint;
import org.taperwright.mechanics.properties.contour.Contour;

/**
 * A section cut into ten-node cubic triangles that follow its outline. Nodes are numbered corners first (those on the
 * outline before those inside), then two for each side, then one inside each element.
 */
public final class SectionMesh {
    private static final int MOST_CORNERS = 1500;

    private final double[] x;
    private final double[] y;
    private final int corners;
    private final int sides;
    private final int[] sideFrom;
    private final int[] sideTo;
    private final int[][] elements;
    private final boolean[] curved;
    private final boolean[] onOutline;
    private final int[] outlineElement;
    private final int[] outlineSide;

    private SectionMesh(
            double[] cornerX, double[] cornerY, List<int[]> triangles, BoundaryNodes outline, boolean bends) {
        corners = cornerX.length;
        SideNumbers numbers = new SideNumbers(corners, triangles);
        sides = numbers.count();
        sideFrom = numbers.from();
        sideTo = numbers.to();
        int total = corners + 2 * sides + triangles.size();
        x = Arrays.copyOf(cornerX, total);
        y = Arrays.copyOf(cornerY, total);
        elements = new int[triangles.size()][];
        curved = new boolean[triangles.size()];
        onOutline = new boolean[total];
        outlineElement = new int[outline.count()];
        outlineSide = new int[outline.count()];
        for (int side = 0; side < sides; side++) {
            straighten(side);
        }
        boolean[] bent = new boolean[sides];
        for (int node = 0; node < outline.count(); node++) {
            int side = numbers.find(node, node + 1 == outline.count() ? 0 : node + 1);
            bent[side] = follow(outline, node, side, bends);
        }
        for (int e = 0; e < elements.length; e++) {
            elements[e] = element(triangles.get(e), numbers, corners + 2 * sides + e);
            shape(e, triangles.get(e), numbers, bent);
        }
    }

    /**
     * A mesh of a contour.
     *
     * @param fineness how large its elements are
     * @param bent whether sides follow a curved outline between their corners; straight ones can always be drawn
     * @return the mesh, or nothing where the elements would overlap and a finer mesh is needed
     */
    public static Optional<SectionMesh> of(Contour contour, MeshFineness fineness, boolean bent) {
        return of(contour, fineness, bent, Integer.MAX_VALUE - 2);
    }

    /** The same, and nothing where the nodes on the outline alone ask for more elements than given. */
    public static Optional<SectionMesh> of(Contour contour, MeshFineness fineness, boolean bent, int mostElements) {
        SizeField sizes = new SizeField(contour, fineness);
        BoundaryNodes outline = new BoundaryNodes(contour, sizes, fineness.smallest());
        if (outline.count() > mostElements + 2) {
            return Optional.empty();
        }
        double[] outlineX = new double[outline.count()];
        double[] outlineY = new double[outline.count()];
        for (int i = 0; i < outline.count(); i++) {
            BoundaryPoint p = outline.third(i, 0);
            outlineX[i] = p.x();
            outlineY[i] = p.y();
        }
        if (!SimplePolygon.simple(outlineX, outlineY)) {
            return Optional.empty();
        }
        InteriorNodes inside = new InteriorNodes(outlineX, outlineY, sizes, MOST_CORNERS);
        double[] cornerX = new double[inside.count()];
        double[] cornerY = new double[inside.count()];
        for (int i = 0; i < inside.count(); i++) {
            cornerX[i] = inside.x(i);
            cornerY[i] = inside.y(i);
        }
        List<int[]> triangles = Triangulation.of(cornerX, cornerY, outline.count(), fineness.largest());
        if (triangles.size() != 2 * (inside.count() - 1) - outline.count()) {
            return Optional.empty();
        }
        SectionMesh mesh = new SectionMesh(cornerX, cornerY, triangles, outline, bent);
        return mesh.proper() ? Optional.of(mesh) : Optional.empty();
    }

    /** Whether no element is turned inside out at any of its quadrature points. */
    private boolean proper() {
        for (int e = 0; e < elements.length; e++) {
            for (int q = 0; q < (curved[e] ? CubicTriangle.POINTS : 1); q++) {
                if (!(jacobian(e, CubicTriangle.byXi(q), CubicTriangle.byEta(q)) > 0)) {
                    return false;
                }
            }
        }
        return true;
    }

    private double jacobian(int e, double[] byXi, double[] byEta) {
        double xXi = 0;
        double xEta = 0;
        double yXi = 0;
        double yEta = 0;
        for (int a = 0; a < CubicTriangle.NODES; a++) {
            int node = elements[e][a];
            xXi += byXi[a] * x[node];
            xEta += byEta[a] * x[node];
            yXi += byXi[a] * y[node];
            yEta += byEta[a] * y[node];
        }
        return xXi * yEta - xEta * yXi;
    }

    private void straighten(int side) {
        for (int k = 0; k < 2; k++) {
            double t = (k + 1) / 3.0;
            x[corners + 2 * side + k] = x[sideFrom[side]] * (1 - t) + x[sideTo[side]] * t;
            y[corners + 2 * side + k] = y[sideFrom[side]] * (1 - t) + y[sideTo[side]] * t;
        }
    }

    /** Marks a side's nodes as the outline's and, where sides may bend, puts them on it; whether that bends it. */
    private boolean follow(BoundaryNodes outline, int node, int side, boolean bends) {
        onOutline[node] = true;
        boolean bent = false;
        for (int k = 0; k < 2; k++) {
            BoundaryPoint p = outline.third(node, k + 1);
            int own = corners + 2 * side + (sideFrom[side] == node ? k : 1 - k);
            onOutline[own] = true;
            if (bends && Math.hypot(p.x() - x[own], p.y() - y[own]) > 1e-9) {
                x[own] = p.x();
                y[own] = p.y();
                bent = true;
            }
        }
        return bent;
    }

    private int[] element(int[] corner, SideNumbers numbers, int inner) {
        int[] nodes = new int[CubicTriangle.NODES];
        for (int k = 0; k < 3; k++) {
            int from = corner[k];
            int side = numbers.find(from, corner[(k + 1) % 3]);
            int first = corners + 2 * side;
            boolean along = sideFrom[side] == from;
            nodes[k] = from;
            nodes[3 + 2 * k] = along ? first : first + 1;
            nodes[4 + 2 * k] = along ? first + 1 : first;
        }
        nodes[9] = inner;
        return nodes;
    }

    /** Places the inner node so that a bent side is met to full order, and notes the outline's elements. */
    private void shape(int e, int[] corner, SideNumbers numbers, boolean[] bent) {
        int[] nodes = elements[e];
        for (int k = 0; k < 3; k++) {
            int side = numbers.find(corner[k], corner[(k + 1) % 3]);
            curved[e] |= bent[side];
            if (onOutline[corners + 2 * side]) {
                outlineElement[corner[k]] = e;
                outlineSide[corner[k]] = k;
            }
        }
        double sumX = 0;
        double sumY = 0;
        for (int n = 0; n < 9; n++) {
            double weight = n < 3 ? -1.0 / 6 : 0.25;
            sumX += weight * x[nodes[n]];
            sumY += weight * y[nodes[n]];
        }
        x[nodes[9]] = sumX;
        y[nodes[9]] = sumY;
    }

    /** Number of nodes. */
    public int nodes() {
        return x.length;
    }

    /** Number of corner nodes; they come first. */
    public int corners() {
        return corners;
    }

    /** Number of element sides; side k has the nodes {@code corners + 2 k} and the next. */
    public int sides() {
        return sides;
    }

    /** First corner of a side. */
    public int sideFrom(int side) {
        return sideFrom[side];
    }

    /** Second corner of a side. */
    public int sideTo(int side) {
        return sideTo[side];
    }

    /** Number of elements; the inner node of element e is {@code corners + 2 sides + e}. */
    public int elements() {
        return elements.length;
    }

    /** The ten nodes of an element; read only. */
    public int[] element(int e) {
        return elements[e];
    }

    /** Whether an element has a bent side. */
    public boolean curved(int e) {
        return curved[e];
    }

    /** Whether a node lies on the outline. */
    public boolean onOutline(int node) {
        return onOutline[node];
    }

    /** Number of element sides on the outline, in order round it. */
    public int outlineSides() {
        return outlineElement.length;
    }

    /** The element at a side of the outline. */
    public int outlineElement(int k) {
        return outlineElement[k];
    }

    /** Which of that element's sides it is. */
    public int outlineSide(int k) {
        return outlineSide[k];
    }

    /** A node's place, x. */
    public double x(int node) {
        return x[node];
    }

    /** A node's place, y. */
    public double y(int node) {
        return y[node];
    }
}
