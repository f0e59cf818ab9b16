package org.taperwright.shaping.passage.stroke;

/**
 * Where least dentine is left between canal and root; an estimate, since a root's outline is seldom known so well.
 *
 * @param thicknessMm distance in the plane of the section, mm; negative where the canal stands out of the root
 * @param depthMm depth from the orifice, mm
 * @param azimuthDeg direction from the canal's axis, degrees
 */
public record LeastDentine(double thicknessMm, double depthMm, double azimuthDeg) {}
