package org.taperwright.shaping.canal;

/** The root's outer outline at a depth from the orifice: an ellipse about the centreline, diameters in mm. */
public record RootOutline(double depthMm, double wideMm, double narrowMm, double azimuthDeg) {}
