/**
 * What is not known of a shaped canal: the uncertain constants, the band that they give each output, and which of them drives it.
 * In: a sequence. Out: {@link org.taperwright.shaping.passage.spread.ShapingBands}. Source: Latin hypercube samples (McKay, Beckman and
 * Conover, Technometrics 21 (1979)); rank correlation (Spearman, Am J Psychol 15 (1904) 72; from memory).
 */
@NullMarked
package org.taperwright.shaping.passage.spread;

import org.jspecify.annotations.NullMarked;
