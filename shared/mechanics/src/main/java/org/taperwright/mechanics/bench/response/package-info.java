/**
 * How a section answers to bending when its alloy does not follow Hooke's law.
 * In: an {@link org.taperwright.mechanics.section.Outline} and a stress-strain curve. Out: moment against curvature.
 * Source: Bernoulli's hypothesis; the integrals are exact along the outline (Green's theorem).
 */
@NullMarked
package org.taperwright.mechanics.bench.response;

import org.jspecify.annotations.NullMarked;
