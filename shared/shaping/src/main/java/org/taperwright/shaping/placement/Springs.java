package org.taperwright.shaping.placement;

/**
 * How the wall gives way: as springs, and where the rod cuts also by being worn, as if overlap were worn depth:
 * {@code ks_eff = 1 / (1 / ks + C l)} with the way l that the edges slide while they press. An implicit step of the wear law
 * {@code depth = C p l} (Archard, Preston); in turning {@code l = 2 pi R n} for n turns.
 *
 * @param stiffnessMpaPerMm ks
 * @param wearPerRadius wear by turning, {@code 2 pi C n}, 1/MPa for each mm of radius
 * @param wearBySliding wear by strokes along the axis, {@code C l}, mm/MPa
 */
public record Springs(double stiffnessMpaPerMm, double wearPerRadius, double wearBySliding) {
    /** A wall of the usual stiffness that does not wear. */
    public static final Springs FIRM = firm(1e4);

    /** A wall of a stiffness, MPa/mm, that does not wear. */
    public static Springs firm(double stiffnessMpaPerMm) {
        return new Springs(stiffnessMpaPerMm, 0, 0);
    }

    /** What the springs are where a rod of a radius cuts, MPa/mm. */
    double cutting(double radiusMm) {
        return 1 / (1 / stiffnessMpaPerMm + wearPerRadius * radiusMm + wearBySliding);
    }
}
