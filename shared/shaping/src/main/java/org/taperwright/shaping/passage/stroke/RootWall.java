package org.taperwright.shaping.passage.stroke;

import java.util.List;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.RootOutline;

/** The root's surface by depth: ellipses, linear between the levels given, about an axis that may stand off the canal's. */
public final class RootWall {
    private static final int POINTS = 360;
    /** The outline is a polygon: its sides lie within the ellipse by a share that half a step's cosine bounds. */
    private static final double INSCRIBED = Math.cos(Math.PI / POINTS);

    private final List<RootOutline> outlines;
    private final double centreFirstMm;
    private final double centreSecondMm;

    private RootWall(List<RootOutline> outlines, double centreFirstMm, double centreSecondMm) {
        this.outlines = List.copyOf(outlines);
        this.centreFirstMm = centreFirstMm;
        this.centreSecondMm = centreSecondMm;
    }

    /** The root of a canal, about its axis; only for a canal whose root is given. */
    public static RootWall of(Canal canal) {
        return about(canal.root(), 0, 0);
    }

    /** Outlines about an axis off the canal's by a distance towards azimuth 0 and 90 degrees, mm. */
    public static RootWall about(List<RootOutline> outlines, double centreFirstMm, double centreSecondMm) {
        if (outlines.isEmpty()) {
            throw new IllegalArgumentException("a root has at least one outline");
        }
        return new RootWall(outlines, centreFirstMm, centreSecondMm);
    }

    /** Least distance between the section at a station and the root there. */
    public LeastDentine least(Lumen lumen, int station) {
        double[][] root = points(lumen.depthMm(station));
        double least = Double.MAX_VALUE;
        int at = 0;
        for (int k = 0; k < lumen.directions().count(); k++) {
            double r = lumen.radiusMm(station, k);
            double x = r * lumen.directions().cos(k);
            double y = r * lumen.directions().sin(k);
            for (int i = 0; i < POINTS; i++) {
                double square = square(x, y, root[i], root[(i + 1) % POINTS]);
                if (square < least) {
                    least = square;
                    at = k;
                }
            }
        }
        return new LeastDentine(
                Math.sqrt(least),
                lumen.depthMm(station),
                Math.toDegrees(lumen.directions().angle(at)));
    }

    /** The least of all stations. */
    public LeastDentine least(Lumen lumen) {
        return least(lumen, 0, lumen.stations() - 1);
    }

    /** The least from one station to another. Stations at which it cannot be less are passed over. */
    LeastDentine least(Lumen lumen, int from, int to) {
        LeastDentine least = least(lumen, from);
        for (int j = from + 1; j <= to; j++) {
            if (atLeastMm(lumen, j) < least.thicknessMm()) {
                LeastDentine here = least(lumen, j);
                least = here.thicknessMm() < least.thicknessMm() ? here : least;
            }
        }
        return least;
    }

    /** A bound from below: the root's lesser half diameter less its offset and the canal's greatest radius, {@code b/2 - |c| - max r}. */
    private double atLeastMm(Lumen lumen, int station) {
        double greatest = 0;
        for (int k = 0; k < lumen.directions().count(); k++) {
            greatest = Math.max(greatest, lumen.radiusMm(station, k));
        }
        double half = at(lumen.depthMm(station)).narrowMm() / 2;
        return half * INSCRIBED - Math.hypot(centreFirstMm, centreSecondMm) - greatest;
    }

    private double[][] points(double depthMm) {
        RootOutline outline = at(depthMm);
        double azimuth = Math.toRadians(outline.azimuthDeg());
        double cos = Math.cos(azimuth);
        double sin = Math.sin(azimuth);
        double[][] points = new double[POINTS][];
        for (int i = 0; i < POINTS; i++) {
            double along = outline.wideMm() / 2 * Math.cos(2 * Math.PI * i / POINTS);
            double across = outline.narrowMm() / 2 * Math.sin(2 * Math.PI * i / POINTS);
            points[i] = new double[] {
                centreFirstMm + along * cos - across * sin, centreSecondMm + along * sin + across * cos
            };
        }
        return points;
    }

    private RootOutline at(double depthMm) {
        RootOutline above = outlines.get(0);
        for (RootOutline below : outlines) {
            if (depthMm <= below.depthMm()) {
                double span = below.depthMm() - above.depthMm();
                double share = span <= 0 ? 1 : (depthMm - above.depthMm()) / span;
                double turn = Math.IEEEremainder(below.azimuthDeg() - above.azimuthDeg(), 180);
                return new RootOutline(
                        depthMm,
                        above.wideMm() + share * (below.wideMm() - above.wideMm()),
                        above.narrowMm() + share * (below.narrowMm() - above.narrowMm()),
                        above.azimuthDeg() + share * turn);
            }
            above = below;
        }
        return above;
    }

    /** Square of the distance of a point from a side. */
    private static double square(double x, double y, double[] from, double[] to) {
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double share = ((x - from[0]) * dx + (y - from[1]) * dy) / (dx * dx + dy * dy);
        double held = Math.max(0, Math.min(1, share));
        double offX = x - from[0] - held * dx;
        double offY = y - from[1] - held * dy;
        return offX * offX + offY * offY;
    }
}
