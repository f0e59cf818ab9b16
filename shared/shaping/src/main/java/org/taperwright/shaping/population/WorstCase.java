package org.taperwright.shaping.population;

import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.passage.spread.ShapedQuantity;
import org.taperwright.shaping.passage.stroke.ShapedSequence;

/**
 * The canal in which a quantity came out worst.
 *
 * @param quantity which
 * @param value how it came out on the coarse mesh
 * @param canal the canal, to be looked at
 * @param shaped the sequence in it, anew on the fine mesh
 */
public record WorstCase(ShapedQuantity quantity, double value, Canal canal, ShapedSequence shaped) {}
