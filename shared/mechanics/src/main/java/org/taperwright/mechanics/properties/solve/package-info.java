/**
 * Symmetric linear systems of plane meshes: an ordering that keeps them narrow, and their direct solution.
 * In: mesh connections and coefficients. Out: solutions. Sources: E. Cuthill and J. McKee (1969), A. George's reversal;
 * Cholesky factorisation within an envelope.
 */
@NullMarked
package org.taperwright.mechanics.properties.solve;

import org.jspecify.annotations.NullMarked;
