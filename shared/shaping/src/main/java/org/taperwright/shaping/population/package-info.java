/**
 * One sequence over many canals. In: a sequence and canals, such as are drawn from a preset. Out: how what becomes of them is
 * distributed, and the worst. Source: counting.
 */
@NullMarked
package org.taperwright.shaping.population;

import org.jspecify.annotations.NullMarked;
