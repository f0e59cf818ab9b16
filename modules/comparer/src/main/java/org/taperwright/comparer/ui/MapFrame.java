package org.taperwright.comparer.ui;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * Where ratios stand on the map: logarithmic axes over an area, moved and magnified by the user.
 *
 * @param area the area between the axes, px
 * @param across the axis across
 * @param up the upright axis
 */
record MapFrame(Rectangle2D area, LogAxis across, LogAxis up) {
    /** Where a pair of ratios stands, px. */
    Point2D at(double acrossRatio, double upRatio) {
        return new Point2D.Double(
                area.getX() + across.share(acrossRatio) * area.getWidth(),
                area.getMaxY() - up.share(upRatio) * area.getHeight());
    }

    /** Whether this frame differs from another by a move alone. */
    boolean movedFrom(MapFrame other) {
        return near(across.high() / across.low(), other.across.high() / other.across.low())
                && near(up.high() / up.low(), other.up.high() / other.up.low())
                && area.getWidth() == other.area.getWidth()
                && area.getHeight() == other.area.getHeight();
    }

    private static boolean near(double a, double b) {
        return Math.abs(a / b - 1) < 1e-9;
    }
}
