/**
 * Bands of results that hang on uncertain constants. In: constants with their 5 to 95 % bands and a result as a function of
 * them. Out: the result with its own band. Source: Latin hypercube sampling (McKay, Beckman and Conover, Technometrics 21
 * (1979)).
 */
@NullMarked
package org.taperwright.mechanics.uncertainty;

import org.jspecify.annotations.NullMarked;
