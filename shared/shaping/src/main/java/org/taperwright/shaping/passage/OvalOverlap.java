package org.taperwright.shaping.passage;

/**
 * A circle and an ellipse about one centre, in closed form.
 *
 * <p>With radius R and half diameters a >= b the two outlines cross, in the first quadrant, where the ellipse's polar
 * radius {@code 1 / sqrt(cos² t / a² + sin² t / b²)} equals R. The area in common is four times
 * {@code R² t / 2 + (a b / 2) (pi / 2 - atan((a / b) tan t))}: a sector of the circle, then one of the ellipse. Source: plane
 * geometry.
 */
final class OvalOverlap {
    private OvalOverlap() {}

    /** Area of the circle that lies outside the ellipse; all lengths are diameters. */
    static double beyond(double circle, double wide, double narrow) {
        double radius = circle / 2;
        double a = wide / 2;
        double b = narrow / 2;
        if (radius <= b) {
            return 0;
        }
        if (radius >= a) {
            return Math.PI * (radius * radius - a * b);
        }
        double cosSquared = (1 / (b * b) - 1 / (radius * radius)) / (1 / (b * b) - 1 / (a * a));
        double t = Math.acos(Math.sqrt(Math.min(1, Math.max(0, cosSquared))));
        double ellipseSector = a * b * (Math.PI / 2 - Math.atan2(a * Math.sin(t), b * Math.cos(t)));
        double common = 2 * (radius * radius * t + ellipseSector);
        return Math.max(0, Math.PI * radius * radius - common);
    }
}
