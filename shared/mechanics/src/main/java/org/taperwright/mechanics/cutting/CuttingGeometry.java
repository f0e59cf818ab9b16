package org.taperwright.mechanics.cutting;

import java.util.List;
import org.taperwright.mechanics.section.Edge;

/**
 * The edges half-way along the working part.
 *
 * @param levelMm where along the blade it was taken, mm from the tip
 * @param diameterMm diameter there, mm
 * @param edges number of cutting edges
 * @param rakeDeg mean rake of the section, degrees
 * @param wedgeDeg mean wedge angle, degrees
 * @param landWidthMm mean land width, mm
 * @param helixAngleDeg helix angle from the axis, degrees
 * @param normalRakeDeg rake in the plane across the edge: {@code tan an = tan a cos psi}, degrees
 * @param flutesPerMm flutes per mm
 * @param chipSpaceShare chip space over the circle's area
 * @param each the edges one by one
 */
public record CuttingGeometry(
        double levelMm,
        double diameterMm,
        int edges,
        double rakeDeg,
        double wedgeDeg,
        double landWidthMm,
        double helixAngleDeg,
        double normalRakeDeg,
        double flutesPerMm,
        double chipSpaceShare,
        List<Edge> each) {
    public CuttingGeometry {
        each = List.copyOf(each);
    }
}
