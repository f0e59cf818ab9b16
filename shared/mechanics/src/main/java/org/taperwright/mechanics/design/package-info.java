/**
 * The immutable description of an instrument's working part and shaft.
 * In: what a person enters. Out: {@link org.taperwright.mechanics.design.Design}, diameters by level.
 * Source of the size and taper rules: ISO 3630-1.
 */
@NullMarked
package org.taperwright.mechanics.design;

import org.jspecify.annotations.NullMarked;
