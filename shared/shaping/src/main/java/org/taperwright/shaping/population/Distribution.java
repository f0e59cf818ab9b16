package org.taperwright.shaping.population;

import org.taperwright.shaping.passage.spread.ShapedQuantity;

/**
 * How a quantity is distributed over the canals.
 *
 * @param quantity which
 * @param canals in how many canals it has a value
 * @param low below which 5 % lie
 * @param median below which half lie
 * @param high below which 95 % lie
 */
public record Distribution(ShapedQuantity quantity, int canals, double low, double median, double high) {}
