/**
 * What the bench tests tell when the alloy's constants are drawn within their bands. In: a design, its alloy and the tests
 * at the alloy's own constants. Out: sampled results and bands along the curves. Source of the method:
 * {@link org.taperwright.mechanics.uncertainty.Sensitivity}.
 */
@NullMarked
package org.taperwright.mechanics.bench.spread;

import org.jspecify.annotations.NullMarked;
