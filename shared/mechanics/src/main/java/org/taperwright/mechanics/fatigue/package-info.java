/**
 * Fracture by turning in a curve. In: a design, its alloy and a plain tube. Out: strain amplitude, cycles and time to
 * fracture with their band. Sources stand with {@link org.taperwright.mechanics.fatigue.StrainLives}.
 */
@NullMarked
package org.taperwright.mechanics.fatigue;

import org.jspecify.annotations.NullMarked;
