/**
 * What fits a canal: largest inscribed circles by level, and the cones and flexible needles that pass them. In: a canal's open space.
 * Out: depths, where they bind, clearances, shares filled. Source: plane and solid geometry; standing computed, given the space.
 */
@NullMarked
package org.taperwright.shaping.finish;

import org.jspecify.annotations.NullMarked;
