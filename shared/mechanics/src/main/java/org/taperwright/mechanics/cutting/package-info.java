/**
 * How the blade's edges meet dentine. In: a design and its edges. Out: cutting measures.
 */
@NullMarked
package org.taperwright.mechanics.cutting;

import org.jspecify.annotations.NullMarked;
