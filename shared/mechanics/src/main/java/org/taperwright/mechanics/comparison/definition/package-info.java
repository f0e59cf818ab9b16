/**
 * What designs are, side by side. In: designs. Out: a row of words for each part of their definitions, and whether they differ in it.
 */
@NullMarked
package org.taperwright.mechanics.comparison.definition;

import org.jspecify.annotations.NullMarked;
