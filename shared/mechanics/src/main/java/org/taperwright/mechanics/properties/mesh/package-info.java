/**
 * Triangular meshes of sections with curved cubic elements, graded by thickness, curvature and re-entrant corners.
 * In: {@link org.taperwright.mechanics.properties.contour.Contour}. Out:
 * {@link org.taperwright.mechanics.properties.mesh.SectionMesh}.
 * Sources: constrained Delaunay triangulation by Tinfour; isoparametric cubic triangles as in Zienkiewicz and Taylor,
 * The Finite Element Method.
 */
@NullMarked
package org.taperwright.mechanics.properties.mesh;

import org.jspecify.annotations.NullMarked;
