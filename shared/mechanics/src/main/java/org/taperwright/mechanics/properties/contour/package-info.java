/**
 * What follows from a section's outline alone, without solving for a field.
 * In: {@link org.taperwright.mechanics.section.Outline}. Out: moments of area, the balls that touch the outline from
 * inside, fully plastic torque and moments, and outlines with filleted re-entrant corners.
 * Sources: Green's theorem; Nadai's sand heap (A. Nadai, Plasticity, 1931); common textbook plasticity.
 */
@NullMarked
package org.taperwright.mechanics.properties.contour;

import org.jspecify.annotations.NullMarked;
