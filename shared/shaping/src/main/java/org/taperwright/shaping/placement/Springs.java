package org.taperwright.shaping.placement;

/**
 * How the wall gives way: as springs, and where the rod cuts also by being worn, as if overlap were worn depth:
 * {@code ks_eff = 1 / (1 / ks + c R)}. An implicit step of the wear law {@code depth = C p v t} (Archard, Preston) with
 * {@code v = 2 pi R rpm / 60}, so {@code c = C t 2 pi rpm / 60}.
 *
 * @param stiffnessMpaPerMm ks
 * @param wearPerRadius c, 1/MPa for each mm of radius; 0 for a wall that does not wear
 */
public record Springs(double stiffnessMpaPerMm, double wearPerRadius) {
    /** A wall of the usual stiffness that does not wear. */
    public static final Springs FIRM = new Springs(1e4, 0);

    /** What the springs are where a rod of a radius cuts, MPa/mm. */
    double cutting(double radiusMm) {
        return 1 / (1 / stiffnessMpaPerMm + wearPerRadius * radiusMm);
    }
}
