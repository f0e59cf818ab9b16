package org.taperwright.mechanics.fatigue;

/**
 * A plain tube with one circular curve between straight ends, in which an instrument turns on the tube's axis.
 *
 * @param angleDeg angle through which the axis turns, degrees
 * @param radiusMm radius of the axis, mm
 * @param middleMm the instrument's level at the middle of the curve, mm from the tip
 */
public record Tube(double angleDeg, double radiusMm, double middleMm) {
    /** 60 degrees on 5 mm, its middle 5 mm from the tip: common practice, no source. */
    public static final Tube USUAL = new Tube(60, 5, 5);

    public Tube {
        if (!(angleDeg > 0 && angleDeg <= 180) || !(radiusMm > 0) || !(middleMm >= 0) || !Double.isFinite(radiusMm)) {
            throw new IllegalArgumentException("no tube: " + angleDeg + " deg, radius " + radiusMm + " mm");
        }
    }

    /**
     * Half the length over which the full curvature is reckoned, mm: the middle half of the arc. Instruments bridge the
     * ends of a curve and break about its middle (Pruett, Clement and Carnes, J Endod 1997;23:77, abstract read).
     */
    public double reachMm() {
        return Math.toRadians(angleDeg) * radiusMm / 4;
    }
}
