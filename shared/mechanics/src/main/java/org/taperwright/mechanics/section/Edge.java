package org.taperwright.mechanics.section;

/**
 * A cutting edge of a section.
 *
 * @param at where it stands (for a land, the leading corner), in diameters
 * @param angle its direction from the axis, rad
 * @param wedgeDeg angle of material between the leading face and the back, degrees
 * @param rakeDeg angle between the leading face (chord of 5 % of d behind the edge) and the radius, degrees; negative
 *     when the face leans backwards (square -45, equilateral triangle -60)
 * @param clearanceDeg angle between the back and the circle's tangent, degrees; 0 on a land
 * @param landWidth width of the land along the circle, in diameters; 0 for a sharp edge
 */
public record Edge(Point at, double angle, double wedgeDeg, double rakeDeg, double clearanceDeg, double landWidth) {}
