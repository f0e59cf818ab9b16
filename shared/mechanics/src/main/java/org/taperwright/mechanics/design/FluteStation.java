package org.taperwright.mechanics.design;

/**
 * Flutes per mm at a level: the number of cutting edges that cross a line parallel to the axis, per mm, which is
 * edges times turns per mm. Linear between stations, constant beyond the first and last.
 */
public record FluteStation(double levelMm, double flutesPerMm) {}
