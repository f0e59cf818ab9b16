package org.taperwright.shaping.canal;

/**
 * Where the centreline stands and how it lies.
 *
 * @param place the point, mm
 * @param tangent direction towards the canal's end
 * @param first m1, the direction of azimuth 0, square to the tangent
 * @param second m2, the direction of azimuth 90 degrees
 */
public record Frame(Vector place, Vector tangent, Vector first, Vector second) {
    /** At the orifice: the canal runs along z, azimuth 0 is x. */
    static final Frame ORIFICE =
            new Frame(new Vector(0, 0, 0), new Vector(0, 0, 1), new Vector(1, 0, 0), new Vector(0, 1, 0));

    /**
     * Further along a curvature vector (k1, k2) that stays as it is in the frame: an arc in the plane of tangent and e, the
     * direction of the curvature, about which nothing turns but tangent and e.
     *
     * <pre>t' = t cos a + e sin a,  e' = e cos a - t sin a,  r' = r + (t sin a + e (1 - cos a)) / k,  a = k s</pre>
     */
    Frame along(double k1, double k2, double lengthMm) {
        double curvature = Math.hypot(k1, k2);
        if (curvature == 0) {
            return new Frame(place.plus(lengthMm, tangent), tangent, first, second);
        }
        double c1 = k1 / curvature;
        double c2 = k2 / curvature;
        double angle = curvature * lengthMm;
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        double half = Math.sin(angle / 2);
        Vector towards = first.times(c1).plus(c2, second);
        Vector across = second.times(c1).plus(-c2, first);
        Vector turned = towards.times(cos).plus(-sin, tangent);
        return new Frame(
                place.plus(sin / curvature, tangent).plus(2 * half * half / curvature, towards),
                tangent.times(cos).plus(sin, towards),
                turned.times(c1).plus(-c2, across),
                turned.times(c2).plus(c1, across));
    }
}
