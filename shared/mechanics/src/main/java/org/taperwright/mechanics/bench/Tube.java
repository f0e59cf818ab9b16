package org.taperwright.mechanics.bench;

/**
 * A plain curved tube in which an instrument turns: straight, an arc, straight.
 *
 * <p>The instrument's curvature does not jump where the arc begins: within the play it eases off like a road's transition
 * curve, rising in proportion to the length over {@code a = sqrt(24 R p)}, which shifts the arc by the play p (the shift
 * {@code a^2 / 24 R} of a clothoid; surveyors' handbooks). An arc shorter than that is never reached in full:
 * {@code kappa_max = (1/R) min(1, R theta / a)}.
 *
 * @param angleDeg angle of the arc, degrees
 * @param radiusMm radius R of the arc, mm
 * @param playMm tube's diameter less the instrument's, mm
 * @param middleMm level of the instrument that stands in the middle of the arc, mm from the tip
 */
public record Tube(double angleDeg, double radiusMm, double playMm, double middleMm) {
    /**
     * The usual one: 60 degrees, 5 mm, its middle 5 mm from the tip, one tenth of a millimetre wider than the instrument
     * (common practice, no source; a radius of 5 mm also in the list of devices of ISO/DIS 3630-1:2026, read).
     */
    public static final Tube USUAL = new Tube(60, 5, 0.1, 5);

    public Tube {
        if (!(angleDeg > 0 && angleDeg <= 180 && radiusMm > 0 && playMm > 0 && middleMm >= 0)
                || !Double.isFinite(radiusMm + playMm + middleMm)) {
            throw new IllegalArgumentException("a tube needs an arc of up to 180 degrees, a radius and some play");
        }
    }

    /** Length of the arc, mm. */
    public double arcMm() {
        return Math.toRadians(angleDeg) * radiusMm;
    }

    /** Length over which the curvature eases in, mm. */
    public double easingMm() {
        return Math.sqrt(24 * radiusMm * playMm);
    }

    /** Curvature of an instrument at a level, 1/mm. */
    public double curvature(double levelMm) {
        double half = arcMm() / 2;
        double ease = easingMm() / 2;
        double from = Math.max(levelMm - ease, middleMm - half);
        double to = Math.min(levelMm + ease, middleMm + half);
        return Math.max(0, to - from) / (2 * ease) / radiusMm;
    }
}
