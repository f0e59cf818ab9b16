package org.taperwright.mechanics.bench;

/** A point of a bench curve: angle in degrees, moment or torque in N mm. */
public record CurvePoint(double angleDeg, double momentNmm) {}
