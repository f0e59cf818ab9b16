package org.taperwright.mechanics.fatigue;

/**
 * A plain tube with one circular curve between straight ends, in which an instrument turns.
 *
 * <p>A stiff rod with room to move sideways cuts the ends of the curve: its curvature does not begin at once. Let the
 * rod's curvature be the tube's averaged over a length L. Its axis is then the tube's averaged with a variance of
 * {@code L^2 / 12}, and in the arc it lies off by half of that times 1/R, {@code L^2 / 24 R} (the shift of a transition
 * curve, as known from railways). With the radial play p the longest such L is
 *
 * <pre>L = sqrt(24 R p)</pre>
 *
 * and the curvature rises evenly over L, half before and half behind the end of the arc; an arc shorter than L never
 * comes to 1/R. Validity: the rod is stiff enough to use its play, and light forces do it. No source gives the curvature of
 * turning instruments in tubes; that they bridge the ends of a curve and break about its middle does (Pruett, Clement
 * and Carnes, J Endod 1997;23:77, abstract read).
 *
 * @param angleDeg angle through which the axis turns, degrees
 * @param radiusMm radius of the axis, mm
 * @param middleMm the instrument's level at the middle of the curve, mm from the tip
 * @param playMm room between instrument and wall on either side, mm
 */
public record Tube(double angleDeg, double radiusMm, double middleMm, double playMm) {
    /**
     * 60 degrees on 5 mm, its middle 5 mm from the tip: common practice, no source. Play of 0.1 mm on either side: tubes
     * milled to the instrument's shape are made so (from memory, medium confidence).
     */
    public static final Tube USUAL = new Tube(60, 5, 5, 0.1);

    private static final double ROUNDING_MM = 1e-9;

    public Tube {
        boolean bends = angleDeg > 0 && angleDeg <= 180 && radiusMm > 0 && Double.isFinite(radiusMm);
        if (!bends || !(middleMm >= 0) || !(playMm >= 0 && Double.isFinite(playMm))) {
            throw new IllegalArgumentException(
                    "no tube: " + angleDeg + " deg, radius " + radiusMm + " mm, play " + playMm + " mm");
        }
    }

    /** A tube that holds the instrument without play: full curvature all along the arc. */
    public static Tube tight(double angleDeg, double radiusMm, double middleMm) {
        return new Tube(angleDeg, radiusMm, middleMm, 0);
    }

    /** Length of the arc, mm. */
    double arcMm() {
        return Math.toRadians(angleDeg) * radiusMm;
    }

    /** Length over which the instrument's curvature rises, mm. */
    public double easingMm() {
        return Math.sqrt(24 * radiusMm * playMm);
    }

    /** Half the length over which curvature is greatest, mm. */
    double flatMm() {
        return Math.abs(arcMm() - easingMm()) / 2;
    }

    /** Half the length over which there is any curvature, mm. */
    double reachMm() {
        return (arcMm() + easingMm()) / 2;
    }

    /** The instrument's curvature at a level, 1/mm. */
    public double curvature(double levelMm) {
        double beyond = Math.max(0, Math.abs(levelMm - middleMm) - flatMm());
        double rise = Math.min(arcMm(), easingMm());
        double greatest = easingMm() > arcMm() ? arcMm() / easingMm() / radiusMm : 1 / radiusMm;
        if (rise == 0) {
            return beyond > ROUNDING_MM ? 0 : greatest;
        }
        return greatest * Math.max(0, 1 - beyond / rise);
    }
}
