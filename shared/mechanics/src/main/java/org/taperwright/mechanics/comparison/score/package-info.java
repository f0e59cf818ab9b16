/**
 * Scores by a user's weights. In: a comparison and weights of its metrics. Out: for each design what its score is made of, and
 * how far the weights can move before the order of the designs changes. A score is a weighted sum of logarithms of ratios, so
 * everything here has a closed form; no source beyond linear algebra.
 */
@NullMarked
package org.taperwright.mechanics.comparison.score;

import org.jspecify.annotations.NullMarked;
