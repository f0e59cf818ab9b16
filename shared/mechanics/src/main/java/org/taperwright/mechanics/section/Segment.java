package org.taperwright.mechanics.section;

/** A piece of an outline, run through from {@link #start} to {@link #end} with the material on the left. */
public sealed interface Segment {
    /**
     * A circular arc, or a line when the bow is too flat to tell.
     *
     * @param sagitta height of the bow over the chord; positive to the right of the run, which is outwards
     */
    static Segment bowed(Point from, Point to, double sagitta) {
        double chord = from.distanceTo(to);
        if (Math.abs(sagitta) <= 1e-7 * chord) {
            return new Line(from, to);
        }
        double turn = 4 * Math.atan(2 * sagitta / chord);
        double radius = (chord * chord / 4 + sagitta * sagitta) / (2 * Math.abs(sagitta));
        Point middle = from.plus(to).times(0.5);
        Point left = new Point(from.y() - to.y(), to.x() - from.x()).times(1 / chord);
        Point centre = middle.plus(left.times(Math.signum(sagitta) * radius - sagitta));
        double fromAngle = from.minus(centre).angle();
        return new Arc(centre, radius, fromAngle, fromAngle + turn);
    }

    /** The arc from one point through a second to a third, or a line when they lie on one. */
    static Segment through(Point from, Point via, Point to) {
        Point first = via.minus(from);
        Point second = to.minus(via);
        double halfTurn = Math.atan2(first.cross(second), first.dot(second));
        return bowed(from, to, from.distanceTo(to) / 2 * Math.tan(halfTurn / 2));
    }

    /** The point at parameter t from 0 to 1. */
    Point at(double t);

    /** Direction of the run at parameter t, rad. */
    double direction(double t);

    /** How far the direction turns from start to end, rad; anticlockwise positive. */
    double turn();

    /** Length in units of the diameter. */
    double length();

    /** The stretch between two parameters. */
    Segment part(double from, double to);

    /** The parameter of the point nearest to a given one. */
    double nearest(Point point);

    /** Scaled about the axis. */
    Segment scaled(double factor);

    /** Turned about the axis, rad, anticlockwise. */
    Segment turned(double angle);

    /** Mirrored in the x-axis and run through backwards, so that the material stays on the left. */
    Segment mirrored();

    /** First point. */
    default Point start() {
        return at(0);
    }

    /** Last point. */
    default Point end() {
        return at(1);
    }

    /** A straight piece. */
    record Line(Point from, Point to) implements Segment {
        @Override
        public Point at(double t) {
            if (t == 1) {
                return to;
            }
            return new Point(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y()));
        }

        @Override
        public double direction(double t) {
            return to.minus(from).angle();
        }

        @Override
        public double turn() {
            return 0;
        }

        @Override
        public double length() {
            return from.distanceTo(to);
        }

        @Override
        public Segment part(double first, double last) {
            return new Line(at(first), at(last));
        }

        @Override
        public double nearest(Point point) {
            Point along = to.minus(from);
            double square = along.dot(along);
            return square == 0 ? 0 : Math.max(0, Math.min(1, point.minus(from).dot(along) / square));
        }

        @Override
        public Segment scaled(double factor) {
            return new Line(from.times(factor), to.times(factor));
        }

        @Override
        public Segment turned(double angle) {
            return new Line(from.turned(angle), to.turned(angle));
        }

        @Override
        public Segment mirrored() {
            return new Line(new Point(to.x(), -to.y()), new Point(from.x(), -from.y()));
        }
    }

    /** A circular piece from angle to angle (rad, as seen from its centre); a falling angle runs clockwise. */
    record Arc(Point centre, double radius, double fromAngle, double toAngle) implements Segment {
        @Override
        public Point at(double t) {
            return centre.plus(Point.polar(radius, angleAt(t)));
        }

        private double angleAt(double t) {
            return t == 1 ? toAngle : fromAngle + t * (toAngle - fromAngle);
        }

        @Override
        public double direction(double t) {
            return angleAt(t) + Math.copySign(Math.PI / 2, turn());
        }

        @Override
        public double turn() {
            return toAngle - fromAngle;
        }

        @Override
        public double length() {
            return Math.abs(radius * turn());
        }

        @Override
        public Segment part(double first, double last) {
            return new Arc(centre, radius, angleAt(first), angleAt(last));
        }

        /** The parameter, beyond 0 to 1 outside the arc, of a direction from the centre. */
        double parameter(double angle) {
            double middle = (fromAngle + toAngle) / 2;
            return 0.5 + Angles.signed(angle - middle) / turn();
        }

        @Override
        public double nearest(Point point) {
            Point out = point.minus(centre);
            double t = out.radius() == 0 ? 0 : parameter(out.angle());
            if (t >= 0 && t <= 1) {
                return t;
            }
            return point.distanceTo(start()) <= point.distanceTo(end()) ? 0 : 1;
        }

        @Override
        public Segment scaled(double factor) {
            return new Arc(centre.times(factor), radius * factor, fromAngle, toAngle);
        }

        @Override
        public Segment turned(double angle) {
            return new Arc(centre.turned(angle), radius, fromAngle + angle, toAngle + angle);
        }

        @Override
        public Segment mirrored() {
            return new Arc(new Point(centre.x(), -centre.y()), radius, -toAngle, -fromAngle);
        }
    }
}
