package org.taperwright.mechanics.section;

/** A piece of an outline, run through from {@link #start} to {@link #end} with the material on the left. */
public sealed interface Segment {
    /** The point at parameter t from 0 to 1. */
    Point at(double t);

    /** Length in units of the diameter. */
    double length();

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
            return new Point(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y()));
        }

        @Override
        public double length() {
            return Math.hypot(to.x() - from.x(), to.y() - from.y());
        }
    }

    /** A circular piece from angle to angle (rad, as seen from its centre); a falling angle runs clockwise. */
    record Arc(Point centre, double radius, double fromAngle, double toAngle) implements Segment {
        @Override
        public Point at(double t) {
            double angle = fromAngle + t * (toAngle - fromAngle);
            return new Point(centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
        }

        @Override
        public double length() {
            return Math.abs(radius * (toAngle - fromAngle));
        }
    }
}
