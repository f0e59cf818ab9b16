package org.taperwright.mechanics.properties.contour;

/**
 * A point of a contour with its inward unit normal.
 *
 * @param piece index of the piece it lies on
 * @param t parameter on that piece, 0 to 1
 * @param x position, in diameters
 * @param y position, in diameters
 * @param normalX inward unit normal
 * @param normalY inward unit normal
 * @param curvature signed curvature, positive where the material is convex, per diameter
 */
public record BoundaryPoint(
        int piece, double t, double x, double y, double normalX, double normalY, double curvature) {}
