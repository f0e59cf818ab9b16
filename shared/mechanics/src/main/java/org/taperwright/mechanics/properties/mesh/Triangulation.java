package org.taperwright.mechanics.properties.mesh;

import java.util.ArrayList;
import java.util.List;
import org.tinfour.common.PolygonConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/** Constrained Delaunay triangles of points inside the polygon that the first of them form, anticlockwise. */
final class Triangulation {
    private Triangulation() {}

    /** Corner indices, three a triangle. */
    static List<int[]> of(double[] x, double[] y, int outline, double spacing) {
        List<Vertex> vertices = new ArrayList<>(x.length);
        for (int i = 0; i < x.length; i++) {
            vertices.add(new Vertex(x[i], y[i], 0, i));
        }
        IncrementalTin tin = new IncrementalTin(spacing);
        tin.add(vertices, null);
        PolygonConstraint border = new PolygonConstraint(vertices.subList(0, outline));
        border.complete();
        tin.addConstraints(List.of(border), false);
        List<int[]> triangles = new ArrayList<>(2 * x.length);
        TriangleCollector.visitTrianglesConstrained(
                tin, t -> triangles.add(new int[] {t[0].getIndex(), t[1].getIndex(), t[2].getIndex()}));
        tin.dispose();
        return triangles;
    }
}
