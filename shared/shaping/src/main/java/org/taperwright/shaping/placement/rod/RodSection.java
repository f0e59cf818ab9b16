package org.taperwright.shaping.placement.rod;

/**
 * A rod between this level and the next given: all linear.
 *
 * @param levelMm distance from the tip, mm
 * @param diameterMm diameter of the circumscribed circle, mm
 * @param unitStiffnessMpa bending stiffness of the section at a diameter of 1 mm, N mm² / mm⁴; scales by d⁴
 * @param wallDiameterMm diameter that the wall meets: less than the diameter at a conical tip, mm
 */
public record RodSection(double levelMm, double diameterMm, double unitStiffnessMpa, double wallDiameterMm) {}
