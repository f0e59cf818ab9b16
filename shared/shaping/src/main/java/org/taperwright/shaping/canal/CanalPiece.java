package org.taperwright.shaping.canal;

/**
 * A piece of the centreline of constant curvature, from the orifice on.
 *
 * @param lengthMm length along the centreline, mm
 * @param angleDeg angle turned over the piece, degrees; 0 is straight
 * @param azimuthDeg direction the piece bends towards, degrees about the canal's axis; 0 keeps to the first plane
 */
public record CanalPiece(double lengthMm, double angleDeg, double azimuthDeg) {}
