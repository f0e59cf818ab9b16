package org.taperwright.mechanics.properties.contour;

/**
 * The part of a section above a straight axis: its area and first moments, by line integrals over the outline's pieces
 * above the axis. Coordinates: u along the axis, z across it. Not safe for use by two threads.
 */
final class HalfSection {
    private static final double REACH = 0.5001;
    private static final double BALANCED = 1e-11;
    /** No axis lies in the section over more than this, in d; a difference over a tiny shift may say so. */
    private static final double WIDEST = 1.01;

    private static final double NARROWEST = 1e-3;
    /**
     * From this radius on, in d, an arc is taken as chords: the closed form loses {@code r^3} times the rounding, and the
     * chords' own error is below 1e-6 of the moment.
     */
    private static final double NEARLY_STRAIGHT = 300;

    private static final int CHORDS = 64;

    private final Contour contour;
    private final AreaMoments moments;
    /** Length of the axis within the section, as last found. */
    private double width;

    private double cos;
    private double sin;
    private double level;
    private double area;
    private double firstZ;
    private double firstU;

    HalfSection(Contour contour, AreaMoments moments) {
        this.contour = contour;
        this.moments = moments;
        width = moments.area();
    }

    /** Turns the axis to a direction and shifts it until it halves the area, from where it last stood. */
    void balance(double direction) {
        cos = Math.cos(direction);
        sin = Math.sin(direction);
        double low = -REACH;
        double high = REACH;
        double half = moments.area() / 2;
        cut(level);
        double surplus = area - half;
        for (int k = 0; k < 60 && Math.abs(surplus) > BALANCED * half; k++) {
            low = surplus > 0 ? level : low;
            high = surplus > 0 ? high : level;
            double aim = level + surplus / width;
            if (!(aim > low && aim < high) || k % 5 == 4) {
                aim = (low + high) / 2;
            }
            double step = aim - level;
            double before = surplus;
            cut(aim);
            surplus = area - half;
            // the area falls by the chord's length times the shift
            double chord = (before - surplus) / step;
            width = chord > NARROWEST && chord < WIDEST ? chord : width;
        }
    }

    /** {@code int |z - c| dA} for the axis last balanced. */
    double plasticMoment() {
        return 2 * firstZ - moments.area() * (z(moments.centroidX(), moments.centroidY()) - level);
    }

    /** Its derivative by the direction of the axis. */
    double slope() {
        return moments.area() * u(moments.centroidX(), moments.centroidY()) - 2 * firstU;
    }

    private double u(double x, double y) {
        return cos * x + sin * y;
    }

    private double z(double x, double y) {
        return cos * y - sin * x;
    }

    private void cut(double c) {
        level = c;
        area = 0;
        firstZ = 0;
        firstU = 0;
        for (int i = 0; i < contour.size(); i++) {
            if (!contour.circular(i)) {
                addLine(contour.startX(i), contour.startY(i), contour.deltaX(i), contour.deltaY(i));
            } else if (contour.radius(i) < NEARLY_STRAIGHT) {
                addArc(i);
            } else {
                addChords(i);
            }
        }
    }

    private void addChords(int i) {
        BoundaryPoint from = contour.at(i, 0);
        for (int k = 1; k <= CHORDS; k++) {
            BoundaryPoint to = contour.at(i, (double) k / CHORDS);
            addLine(from.x(), from.y(), to.x() - from.x(), to.y() - from.y());
            from = to;
        }
    }

    private void addLine(double x, double y, double dx, double dy) {
        double ua = u(x, y);
        double za = z(x, y) - level;
        double du = u(dx, dy);
        double dz = z(dx, dy);
        double zb = za + dz;
        if (za <= 0 && zb <= 0) {
            return;
        }
        double from = za < 0 ? -za / dz : 0;
        double to = zb < 0 ? -za / dz : 1;
        double share = to - from;
        double u0 = ua + from * du;
        double z0 = za + from * dz;
        double u1 = share * du;
        double z1 = share * dz;
        area -= u1 * (z0 + z1 / 2);
        firstZ -= u1 * (z0 * z0 + z0 * z1 + z1 * z1 / 3) / 2;
        firstU -= u1 * (u0 * z0 + (u0 * z1 + z0 * u1) / 2 + u1 * z1 / 3);
    }

    private void addArc(int i) {
        double r = contour.radius(i);
        double height = z(contour.centreX(i), contour.centreY(i)) - level;
        double across = u(contour.centreX(i), contour.centreY(i));
        double start = contour.fromAngle(i) - Math.atan2(sin, cos);
        double from = Math.min(start, start + contour.sweep(i));
        double to = Math.max(start, start + contour.sweep(i));
        double sense = Math.signum(contour.sweep(i));
        double sine = -height / r;
        if (sine >= 1) {
            return;
        }
        if (sine <= -1) {
            addArcPart(from, to, sense, r, height, across);
            return;
        }
        double rise = Math.asin(sine);
        double turn = 2 * Math.PI;
        double first = turn * Math.floor((from - (Math.PI - rise)) / turn) + rise;
        for (double a = first; a < to; a += turn) {
            double low = Math.max(from, a);
            double high = Math.min(to, a + Math.PI - 2 * rise);
            if (high > low) {
                addArcPart(low, high, sense, r, height, across);
            }
        }
    }

    private void addArcPart(double a, double b, double sense, double r, double h, double across) {
        double ca = Math.cos(a);
        double cb = Math.cos(b);
        double sa = Math.sin(a);
        double sb = Math.sin(b);
        double squares = (b - a - sb * cb + sa * ca) / 2;
        double cosines = ca - cb;
        double part = sense * r * (h * cosines + r * squares);
        area += part;
        firstZ += sense
                * r
                / 2
                * (h * h * cosines + 2 * h * r * squares + r * r * (cosines - (ca * ca * ca - cb * cb * cb) / 3));
        firstU += across * part + sense * r * r * (h * (sb * sb - sa * sa) / 2 + r * (sb * sb * sb - sa * sa * sa) / 3);
    }
}
