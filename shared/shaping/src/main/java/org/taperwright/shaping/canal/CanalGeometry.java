package org.taperwright.shaping.canal;

import java.util.List;
import org.taperwright.mechanics.work.Fault;

/**
 * What a canal measures at a depth from its orifice: diameters linear between openings and constant beyond the first and
 * the last; the long axis turns the shorter way between two openings.
 *
 * <p>Valid for a canal in which {@link #check} finds nothing impossible.
 */
public final class CanalGeometry {
    private final Canal canal;

    public CanalGeometry(Canal canal) {
        this.canal = canal;
    }

    /** What is impossible or unusual in a canal; where is in the words of its JSON form. */
    public static List<Fault> check(Canal canal) {
        return CanalChecks.check(canal);
    }

    /** Whether a canal can be computed with. */
    public static boolean possible(Canal canal) {
        return check(canal).stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE);
    }

    /** Depth at which instrumentation ends, mm from the orifice. */
    public double endDepthMm() {
        return canal.endDepthMm();
    }

    /** Length of the centreline, mm. */
    public double lengthMm() {
        return canal.lengthMm();
    }

    /** Depth from the orifice of a length measured from the coronal reference point, mm. */
    public double depthOfMm(double fromReferenceMm) {
        return fromReferenceMm - canal.coronalReferenceMm();
    }

    /** Depth at a share of the shaped length (0 at the orifice, 1 where instrumentation ends), mm. */
    public double depthAtShareMm(double share) {
        return share * endDepthMm();
    }

    /** Greater diameter at a depth, mm. */
    public double wideMm(double depthMm) {
        return at(depthMm).wideMm();
    }

    /** Lesser diameter at a depth, mm. */
    public double narrowMm(double depthMm) {
        return at(depthMm).narrowMm();
    }

    /** The opening at a depth. */
    public Opening at(double depthMm) {
        Opening above = canal.openings().get(0);
        for (Opening below : canal.openings()) {
            if (depthMm <= below.depthMm()) {
                return between(above, below, depthMm);
            }
            above = below;
        }
        return new Opening(depthMm, above.wideMm(), above.narrowMm(), above.azimuthDeg());
    }

    /** Depths of the openings, mm, rising: between two of them every diameter is linear. */
    public List<Double> knotsMm() {
        return canal.openings().stream().map(Opening::depthMm).toList();
    }

    private static Opening between(Opening above, Opening below, double depthMm) {
        double span = below.depthMm() - above.depthMm();
        double share = span <= 0 ? 1 : (depthMm - above.depthMm()) / span;
        // an ellipse turned by half a turn is itself, so the shorter way is within a quarter turn
        double turn = Math.IEEEremainder(below.azimuthDeg() - above.azimuthDeg(), 180);
        return new Opening(
                depthMm,
                above.wideMm() + share * (below.wideMm() - above.wideMm()),
                above.narrowMm() + share * (below.narrowMm() - above.narrowMm()),
                above.azimuthDeg() + share * turn);
    }
}
