package org.taperwright.shaping.instrument;

/**
 * Angles of a reciprocating motion: what a maker allows for an instrument, or what a motor can be set to.
 *
 * @param cuttingDeg turn in which the edges cut, degrees
 * @param releasingDeg turn back, degrees
 */
public record Reciprocation(Window cuttingDeg, Window releasingDeg) {}
