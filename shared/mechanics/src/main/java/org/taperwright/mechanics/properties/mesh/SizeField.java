package org.taperwright.mechanics.properties.mesh;

import org.taperwright.mechanics.properties.contour.BoundaryPoint;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.contour.TangentBalls;

/**
 * The element side wanted at each place of a section: set on the outline by thickness, curvature and re-entrant
 * corners, growing linearly into the material.
 */
final class SizeField {
    private static final double SPACING = 0.04;
    private static final double CLOSEST = 0.01;

    /** Turn, rad, up to which the field near a corner is too rough for large elements. */
    private static final double BLUNT = Math.toRadians(80);

    private final MeshFineness fineness;
    private double[] x = new double[64];
    private double[] y = new double[64];
    private double[] size = new double[64];
    private int count;

    SizeField(Contour contour, MeshFineness fineness) {
        this.fineness = fineness;
        TangentBalls balls = new TangentBalls(contour);
        double since = CLOSEST;
        for (int i = 0; i < contour.size(); i++) {
            since += contour.length(i);
            if (since >= CLOSEST || Math.abs(contour.sweep(i)) > Contour.CORNER) {
                since = 0;
                int samples = (int) Math.ceil(contour.length(i) / SPACING);
                for (int k = 0; k < samples; k++) {
                    sample(contour.at(i, (k + 0.5) / samples), balls);
                }
            }
            double turn = contour.turnAfter(i);
            BoundaryPoint end = contour.at(i, 1);
            if (turn < -Contour.CORNER) {
                add(end.x(), end.y(), fineness.atReentrantCorner());
            } else if (turn > Contour.CORNER && turn < BLUNT) {
                add(end.x(), end.y(), fineness.atBluntCorner());
            }
        }
    }

    private void sample(BoundaryPoint p, TangentBalls balls) {
        double side = Math.min(fineness.largest(), fineness.perHalfThickness() * balls.halfThickness(p));
        if (p.curvature() < 0) {
            side = Math.min(side, -fineness.perConcaveRadius() / p.curvature());
        } else if (p.curvature() > 0) {
            side = Math.min(side, fineness.perConvexRadius() / p.curvature());
        }
        add(p.x(), p.y(), Math.max(side, fineness.smallest()));
    }

    private void add(double px, double py, double side) {
        if (side >= fineness.largest()) {
            return;
        }
        if (count == x.length) {
            x = java.util.Arrays.copyOf(x, 2 * count);
            y = java.util.Arrays.copyOf(y, 2 * count);
            size = java.util.Arrays.copyOf(size, 2 * count);
        }
        x[count] = px;
        y[count] = py;
        size[count++] = side;
    }

    /** The element side wanted at a place. */
    double at(double px, double py) {
        double least = fineness.largest();
        double growth = fineness.growth();
        for (int k = 0; k < count; k++) {
            double room = (least - size[k]) / growth;
            if (room > 0) {
                double dx = px - x[k];
                double dy = py - y[k];
                double square = dx * dx + dy * dy;
                if (square < room * room) {
                    least = size[k] + growth * Math.sqrt(square);
                }
            }
        }
        return least;
    }
}
