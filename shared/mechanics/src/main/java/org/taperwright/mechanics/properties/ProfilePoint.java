package org.taperwright.mechanics.properties;

/**
 * The blade at one level.
 *
 * @param levelMm distance from the tip, mm
 * @param diameterMm d, mm
 * @param areaMm2 area, mm^2
 * @param bendingStiffnessNmm2 EI of the mean second moment, times the helical factor, N mm^2
 * @param torsionalStiffnessNmm2 GJ times the helical factor at free length, N mm^2
 * @param plasticTorqueNmm fully plastic torque with the alloy's shear yield, N mm
 * @param coreMm core diameter, mm
 * @param chipSpaceMm2 chip space, mm^2
 * @param helixAngleDeg helix angle from the axis, degrees
 */
public record ProfilePoint(
        double levelMm,
        double diameterMm,
        double areaMm2,
        double bendingStiffnessNmm2,
        double torsionalStiffnessNmm2,
        double plasticTorqueNmm,
        double coreMm,
        double chipSpaceMm2,
        double helixAngleDeg) {}
