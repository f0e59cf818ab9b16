/**
 * How the blade's edges meet dentine. In: a design and its edges. Out: the edges half-way along, and what they remove under a
 * standard side force in each motion. Sources: Merchant, Stabler, Hill.
 */
@NullMarked
package org.taperwright.mechanics.cutting;

import org.jspecify.annotations.NullMarked;
