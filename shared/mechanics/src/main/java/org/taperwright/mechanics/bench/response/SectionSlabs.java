package org.taperwright.mechanics.bench.response;

import org.taperwright.mechanics.section.Outline;

/**
 * The slabs of a section for the directions in which a turning blade is bent. The directions of the moment are evenly
 * spread over a whole turn, in a number that shares no factor with the symmetries of blades; the neutral axis that goes
 * with each by Hooke's law is the axis of its slabs, so that in the elastic range the moment points exactly that way.
 */
public final class SectionSlabs {
    /** Directions over a turn: a prime, so that sections of two, three and four edges are sampled at different places. */
    private static final int DIRECTIONS = 13;

    private final double[] axis;
    private final double[] moment;
    private final Slabs[] slabs;

    private SectionSlabs(double[] axis, double[] moment, Slabs[] slabs) {
        this.axis = axis;
        this.moment = moment;
        this.slabs = slabs;
    }

    /** The slabs of a section in all directions. */
    public static SectionSlabs of(Outline outline) {
        Slabs flat = Slabs.of(outline, 0);
        Slabs upright = Slabs.of(outline, Math.PI / 2);
        double area = flat.whole(Slabs.AREA);
        double x = flat.whole(Slabs.ACROSS) / area;
        double y = flat.whole(Slabs.FIRST) / area;
        double ixx = flat.whole(Slabs.SECOND) - area * y * y;
        double iyy = upright.whole(Slabs.SECOND) - area * x * x;
        double ixy = flat.whole(Slabs.PRODUCT) - area * x * y;
        double[] axis = new double[DIRECTIONS];
        double[] moment = new double[DIRECTIONS];
        Slabs[] slabs = new Slabs[DIRECTIONS];
        for (int i = 0; i < DIRECTIONS; i++) {
            moment[i] = 2 * Math.PI * i / DIRECTIONS;
            // moments about x and y are (ixx kx - ixy ky, iyy ky - ixy kx); solved for the curvatures
            double mx = Math.cos(moment[i]);
            double my = Math.sin(moment[i]);
            axis[i] = Math.atan2(ixx * my + ixy * mx, iyy * mx + ixy * my);
            slabs[i] = Slabs.of(outline, axis[i]);
        }
        return new SectionSlabs(axis, moment, slabs);
    }

    /** One direction alone, for a blade that does not turn: the neutral axis at an angle from x, rad. */
    static SectionSlabs alone(Outline outline, double axis) {
        return new SectionSlabs(new double[] {axis}, new double[] {axis}, new Slabs[] {Slabs.of(outline, axis)});
    }

    int count() {
        return slabs.length;
    }

    Slabs slabs(int direction) {
        return slabs[direction];
    }

    /** Angle from the moment's direction by Hooke's law to the neutral axis, rad. */
    double lag(int direction) {
        return Math.IEEEremainder(axis[direction] - moment[direction], 2 * Math.PI);
    }
}
