package org.taperwright.shaping.canal;

/**
 * The canal's opening at a level: an ellipse, its long axis at an azimuth.
 *
 * @param depthMm depth from the orifice along the centreline, mm
 * @param wideMm greater diameter, mm
 * @param narrowMm lesser diameter, mm
 * @param azimuthDeg direction of the greater diameter, degrees
 */
public record Opening(double depthMm, double wideMm, double narrowMm, double azimuthDeg) {}
