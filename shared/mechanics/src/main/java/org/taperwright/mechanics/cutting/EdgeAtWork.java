package org.taperwright.mechanics.cutting;

import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.section.Edge;

/**
 * One edge moving along a wall, by oblique cutting:
 *
 * <pre>normal rake        tan alpha_n = tan alpha cos psi
 * inclination        i = psi where the edge travels around the axis, 90 deg - psi where it travels along it
 * effective rake     sin alpha_e = sin^2 i + cos^2 i sin alpha_n                           (Stabler)
 * sweep              cos i / cos psi: width of wall swept per travel and mm of blade
 * chip's thrust      u(alpha_n) tan(beta - alpha_n), at least 0, per depth and length of edge   (Merchant)
 * energy             u(alpha_e),  u(alpha) = 2 k cot(45 deg - (beta - alpha) / 2), per volume   (Merchant)
 * back               H / tan(clearance_n),  tan clearance_n = tan clearance / cos psi, per depth   (wedge indentation)
 * land               2 E w cos psi, per depth: an elastic bed as thick as the radius</pre>
 *
 * with the section's rake alpha and clearance, the helix angle psi from the axis, the friction angle beta, the land's width
 * w in diameters, and the shear strength k, hardness H and modulus E of dentine. An edge that leans back by more than
 * {@code beta - alpha = 88 deg} only rubs and is held there; behind a land the back is taken at 45 degrees; a clearance
 * counts as at least 2 degrees. Sources: Merchant, J Appl Phys 16 (1945); Stabler, Proc IMechE 165 (1951); Hill's wedge
 * indentation; the land's bed is Winkler's.
 *
 * @param inclinationDeg inclination, degrees
 * @param normalRakeDeg rake across the edge, degrees
 * @param effectiveRakeDeg rake along the chip's way, degrees
 * @param sweep width of wall swept per travel, for one mm of blade
 * @param energyMpa energy per volume, MPa (mJ/mm³)
 * @param frontMpa force of the leading face per depth and length of edge, MPa
 * @param backMpa the same of the back
 * @param landMpa the same of the land
 */
public record EdgeAtWork(
        double inclinationDeg,
        double normalRakeDeg,
        double effectiveRakeDeg,
        double sweep,
        double energyMpa,
        double frontMpa,
        double backMpa,
        double landMpa) {
    private static final double ONLY_RUBS = Math.toRadians(88);
    private static final double LEAST_CLEARANCE_DEG = 2;
    private static final double BEHIND_A_LAND_DEG = 45;

    /** An edge of a blade whose flutes stand at an angle from the axis, rad. */
    static EdgeAtWork of(Edge edge, double helix, Motion motion, Dentine dentine) {
        double cos = Math.cos(helix);
        double inclination = motion == Motion.FILING ? Math.PI / 2 - helix : helix;
        double normal = Math.atan(Math.tan(Math.toRadians(edge.rakeDeg())) * cos);
        double sine = Math.sin(inclination);
        double cosine = Math.cos(inclination);
        double effective = Math.asin(sine * sine + cosine * cosine * Math.sin(normal));
        double friction = Math.atan(dentine.friction());
        double lean = Math.min(ONLY_RUBS, friction - normal);
        boolean land = edge.landWidth() > 0;
        double clearance =
                Math.toRadians(land ? BEHIND_A_LAND_DEG : Math.max(LEAST_CLEARANCE_DEG, edge.clearanceDeg()));
        return new EdgeAtWork(
                Math.toDegrees(inclination),
                Math.toDegrees(normal),
                Math.toDegrees(effective),
                cosine / cos,
                energy(friction - effective, dentine),
                Math.max(0, energy(lean, dentine) * Math.tan(lean)),
                dentine.hardnessMpa() * cos / Math.tan(clearance),
                2 * dentine.youngMpa() * edge.landWidth() * cos);
    }

    /** Merchant's energy per volume at {@code beta - alpha}, MPa. */
    private static double energy(double lean, Dentine dentine) {
        return 2 * dentine.shearMpa() / Math.tan(Math.PI / 4 - Math.min(ONLY_RUBS, lean) / 2);
    }

    /** Force per depth and length of edge, MPa. */
    double stiffnessMpa() {
        return frontMpa + backMpa + landMpa;
    }
}
