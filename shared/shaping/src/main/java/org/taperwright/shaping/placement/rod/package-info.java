/**
 * An instrument as an elastic rod: radius and bending stiffness by level, and the law of its bending moment. In: a design and
 * its alloy. Out: {@link org.taperwright.shaping.placement.rod.Rod}.
 */
@NullMarked
package org.taperwright.shaping.placement.rod;

import org.jspecify.annotations.NullMarked;
