package org.taperwright.mechanics.design;

/** The tip: whether it cuts, and its included angle in degrees (about 75 by the standard). */
public record Tip(TipKind kind, double angleDeg) {
    /** Length of a conical tip of base diameter d0: {@code d0 / (2 tan(angle / 2))}, mm. */
    public double lengthMm(double d0Mm) {
        return d0Mm / (2 * Math.tan(Math.toRadians(angleDeg) / 2));
    }
}
