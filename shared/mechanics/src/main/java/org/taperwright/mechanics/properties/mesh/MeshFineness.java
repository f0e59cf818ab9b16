package org.taperwright.mechanics.properties.mesh;

/**
 * How fine a mesh is made; lengths in diameters.
 *
 * @param largest greatest element side
 * @param smallest least element side on the outline
 * @param perHalfThickness element side over half the thickness of the material
 * @param perConcaveRadius element side over the radius of a concave arc
 * @param perConvexRadius element side over the radius of a convex arc
 * @param atReentrantCorner element side at a sharp re-entrant corner
 * @param atBluntCorner element side at a blunt corner that sticks out
 * @param growth by how much sides may grow per length
 */
public record MeshFineness(
        double largest,
        double smallest,
        double perHalfThickness,
        double perConcaveRadius,
        double perConvexRadius,
        double atReentrantCorner,
        double atBluntCorner,
        double growth) {
    /** For the torsion of a section: J to better than 1e-4, boundary stress to better than 1 %. */
    public static final MeshFineness TORSION = new MeshFineness(0.12, 0.006, 0.65, 0.3, 0.65, 0.004, 0.02, 0.5);
    /** For the twisted bar: stiffness to 0.2 % up to a twist of 2 and 0.6 % up to 4, peak stress to 2 %. */
    public static final MeshFineness HELIX = new MeshFineness(0.18, 0.06, 0.8, 0.6, 1.0, 0.06, 0.12, 0.8);

    /** All lengths multiplied by a factor, for refinement studies. */
    public MeshFineness times(double factor) {
        return new MeshFineness(
                largest * factor,
                smallest * factor,
                perHalfThickness * factor,
                perConcaveRadius * factor,
                perConvexRadius * factor,
                atReentrantCorner * factor,
                atBluntCorner * factor,
                growth);
    }

    /** Coarser where an outline crowds, by a factor: at its corners and tight arcs; no coarser in the material. */
    public MeshFineness crowded(double factor) {
        return new MeshFineness(
                largest,
                Math.min(largest, smallest * factor),
                perHalfThickness,
                perConcaveRadius * factor,
                perConvexRadius * factor,
                Math.min(largest, atReentrantCorner * factor),
                Math.min(largest, atBluntCorner * factor),
                growth);
    }
}
