package org.taperwright.shaping.passage.stroke;

/**
 * What dentine and edges are taken to be. All assumed: of the size of transportation, torque and damage only order and direction
 * mean anything. With no wear a rigid wall gives almost no transportation, so that its size is the wear coefficient's alone.
 *
 * @param springsMpaPerMm stiffness of the wall as springs
 * @param wearPerMpa depth worn per pressure and way, 1/MPa
 * @param cuttingMpa energy to cut a volume, MPa (mJ/mm³)
 * @param friction coefficient of friction between blade and wall
 * @param edgeNPerMm force that ploughs an edge along the wall, N/mm
 */
public record ShapingConstants(
        double springsMpaPerMm, double wearPerMpa, double cuttingMpa, double friction, double edgeNPerMm) {
    /**
     * Wear: 3e-4 per MPa gives the order of published transportation, mostly below 0.1 mm at 20 to 40 degrees (Madani and others,
     * Iran Endod J 2014;9:109). The others: assumed, no source.
     */
    public static final ShapingConstants USUAL = new ShapingConstants(1e4, 3e-4, 1500, 0.35, 0.05);
}
