/**
 * Uncertain constants and their sampling. In: spreads of constants. Out: bands of what is computed from them, by seeded
 * Latin hypercubes (McKay, Beckman and Conover, Technometrics 21 (1979)).
 */
@NullMarked
package org.taperwright.mechanics.uncertainty;

import org.jspecify.annotations.NullMarked;
