package org.taperwright.mechanics.section;

/** A point in the plane of a section, in units of the section's diameter, origin on the instrument's axis. */
public record Point(double x, double y) {
    /** The instrument's axis. */
    public static final Point AXIS = new Point(0, 0);

    /** The point at a distance from the axis in a direction (rad, anticlockwise from +x). */
    public static Point polar(double radius, double angle) {
        return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    /** Distance from the axis. */
    public double radius() {
        return Math.hypot(x, y);
    }

    /** Direction from the axis, rad, anticlockwise from +x. */
    public double angle() {
        return Math.atan2(y, x);
    }

    /** Sum as vectors. */
    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    /** Difference as vectors. */
    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    /** This vector scaled. */
    public Point times(double factor) {
        return new Point(factor * x, factor * y);
    }

    /** Scalar product. */
    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** The component of the vector product along the axis: positive when {@code other} lies to the left of this. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    /** Distance to another point. */
    public double distanceTo(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** This point turned about the axis, rad, anticlockwise. */
    public Point turned(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Point(cos * x - sin * y, sin * x + cos * y);
    }
}
