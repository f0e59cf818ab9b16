/**
 * Bench tests on a design: bending and twisting, with the limits of the standard beside them.
 * In: a design, its section properties and alloy. Out: curves and summaries.
 */
@NullMarked
package org.taperwright.mechanics.bench;

import org.jspecify.annotations.NullMarked;
