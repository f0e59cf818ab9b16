/**
 * The instruments a person owns for a purpose, piece by piece. In: what is logged of each piece, the catalogue, saved
 * sequences. Out: what to discard and why, what to order, which sequences the kit can serve. Rules: the makers'
 * instructions as entered, and common practice where no source is named.
 */
@NullMarked
package org.taperwright.shaping.kit;

import org.jspecify.annotations.NullMarked;
