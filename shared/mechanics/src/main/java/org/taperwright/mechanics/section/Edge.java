package org.taperwright.mechanics.section;

/**
 * A cutting edge of a section.
 *
 * @param at where it stands (for a land, the leading corner), in diameters
 * @param angle its direction from the axis, rad
 * @param wedgeDeg angle of material between the leading face and the back (the land, where there is one), degrees: 90 - rake - clearance
 * @param rakeDeg angle between the leading face (chord of 5 % of d) and the radius, degrees; negative
 *     when the face leans backwards (square -45, equilateral triangle -30)
 * @param clearanceDeg angle between the back (chord of 5 % of d) and the tangent of the circle, degrees; 0 on a land
 * @param landWidth width of the land along the circle, in diameters; 0 for a sharp edge
 */
public record Edge(Point at, double angle, double wedgeDeg, double rakeDeg, double clearanceDeg, double landWidth) {}
