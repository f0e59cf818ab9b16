package org.taperwright.mechanics.cutting;

/**
 * The edges at work, by geometry only (provisional: forces and dentine are not in it yet).
 *
 * @param levelMm where along the blade it was taken, mm from the tip
 * @param edges number of cutting edges
 * @param rakeDeg mean rake of the section, degrees
 * @param wedgeDeg mean wedge angle, degrees
 * @param landWidthMm mean land width, mm
 * @param helixAngleDeg helix angle from the axis, degrees
 * @param normalRakeDeg rake in the plane across the edge: {@code tan an = tan a cos psi}, degrees
 * @param flutesPerMm flutes per mm
 * @param chipSpaceShare chip space over the circle's area
 * @param cuttingIndex provisional index, greater cuts more
 */
public record CuttingGeometry(
        double levelMm,
        int edges,
        double rakeDeg,
        double wedgeDeg,
        double landWidthMm,
        double helixAngleDeg,
        double normalRakeDeg,
        double flutesPerMm,
        double chipSpaceShare,
        double cuttingIndex) {}
