package org.taperwright.shaping.canal.fit;

/**
 * A straight part, an arc and a straight part in a plane, one running smoothly into the next; both straight parts go on for
 * ever, so that a distance says nothing of where the points end.
 *
 * @param x where the arc begins, mm
 * @param y the same across
 * @param heading direction of the first part, rad from x
 * @param turn angle of the arc, rad; its sign is the side it turns to
 * @param arc length of the arc, mm
 */
record LineArcLine(double x, double y, double heading, double turn, double arc) {
    private static final double STRAIGHT = 1e-9;

    static LineArcLine of(double[] parameters) {
        return new LineArcLine(parameters[0], parameters[1], parameters[2], parameters[3], parameters[4]);
    }

    double[] parameters() {
        return new double[] {x, y, heading, turn, arc};
    }

    /** Distance of a point, mm, its sign the side of the curve, so that it is smooth across it. */
    double distance(double px, double py) {
        double cos = Math.cos(heading);
        double sin = Math.sin(heading);
        double along = (px - x) * cos + (py - y) * sin;
        double across = (py - y) * cos - (px - x) * sin;
        if (Math.abs(turn) < STRAIGHT || along <= 0) {
            return across;
        }
        double radius = arc / turn;
        double side = Math.signum(radius);
        if (Math.atan2(along, (radius - across) * side) <= Math.abs(turn)) {
            return radius - side * Math.hypot(along, radius - across);
        }
        double endAlong = radius * Math.sin(turn);
        double endAcross = radius * (1 - Math.cos(turn));
        return (across - endAcross) * Math.cos(turn) - (along - endAlong) * Math.sin(turn);
    }

    /** Length along the curve, from the arc's beginning, of the place nearest to a point, mm. */
    double lengthTo(double px, double py) {
        double cos = Math.cos(heading);
        double sin = Math.sin(heading);
        double along = (px - x) * cos + (py - y) * sin;
        double across = (py - y) * cos - (px - x) * sin;
        if (Math.abs(turn) < STRAIGHT || along <= 0) {
            return along;
        }
        double radius = arc / turn;
        double side = Math.signum(radius);
        double angle = Math.atan2(along, (radius - across) * side);
        if (angle <= Math.abs(turn)) {
            return angle * Math.abs(radius);
        }
        double endAlong = radius * Math.sin(turn);
        double endAcross = radius * (1 - Math.cos(turn));
        return arc + (along - endAlong) * Math.cos(turn) + (across - endAcross) * Math.sin(turn);
    }
}
