package org.taperwright.mechanics.section;

/** A point in the plane of a section, in units of the section's diameter, origin on the instrument's axis. */
public record Point(double x, double y) {
    /** Distance from the axis. */
    public double radius() {
        return Math.hypot(x, y);
    }

    /** Direction from the axis, rad, anticlockwise from +x. */
    public double angle() {
        return Math.atan2(y, x);
    }
}
