package org.taperwright.mechanics.bench.spread;

import org.taperwright.mechanics.quantity.Band;

/** A point of a bench curve with its band: angle in degrees, moment or torque in N mm, and 5 to 95 % of it. */
public record CurveBand(double angleDeg, double momentNmm, Band band) {}
