package org.taperwright.shaping.canal;

/** A place or a direction in space, mm or without unit; z runs along the canal's axis at the orifice. */
public record Vector(double x, double y, double z) {
    /** {@code this + factor other}. */
    public Vector plus(double factor, Vector other) {
        return new Vector(x + factor * other.x, y + factor * other.y, z + factor * other.z);
    }

    /** {@code this - other}. */
    public Vector minus(Vector other) {
        return plus(-1, other);
    }

    /** {@code factor this}. */
    public Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    /** Scalar product. */
    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** Vector product. */
    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** Length. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /** Angle to another direction, rad; exact near 0 and pi too. */
    public double angleTo(Vector other) {
        return Math.atan2(cross(other).length(), dot(other));
    }
}
