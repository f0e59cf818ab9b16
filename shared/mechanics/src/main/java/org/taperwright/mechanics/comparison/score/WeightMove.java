package org.taperwright.mechanics.comparison.score;

import org.taperwright.mechanics.comparison.Metric;

/**
 * A move of one weight that makes two designs level.
 *
 * @param metric whose weight it is
 * @param share the change as a share of the weight, from -1 (down to nothing) on
 * @param ahead column of the design that is ahead now
 * @param behind column of the design that draws level
 */
public record WeightMove(Metric metric, double share, int ahead, int behind) {}
