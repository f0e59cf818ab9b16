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
    /** Every so many points are looked at first. */
    private static final int FEW = 10;

    private static final double[] COS = new double[POINTS];
    private static final double[] SIN = new double[POINTS];

    static {
        for (int i = 0; i < POINTS; i++) {
            COS[i] = Math.cos(2 * Math.PI * i / POINTS);
            SIN[i] = Math.sin(2 * Math.PI * i / POINTS);
        }
    }

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

    /** Least distance between the section at a station and the root there; negative where the section breaks through it. */
    public LeastDentine least(Lumen lumen, int station) {
        return least(lumen, station, Double.MAX_VALUE);
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
                LeastDentine here = least(lumen, j, least.thicknessMm());
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

    /** Likewise; where it is not below a bound, it may come out as anything that is not. */
    private LeastDentine least(Lumen lumen, int station, double boundMm) {
        double depth = lumen.depthMm(station);
        Outline root = new Outline(depth);
        double least = boundMm;
        int at = 0;
        for (int k = 0; k < lumen.directions().count(); k++) {
            double r = lumen.radiusMm(station, k);
            double x = r * lumen.directions().cos(k);
            double y = r * lumen.directions().sin(k);
            if (!root.holds(x, y)) {
                double beyond = -root.nearest(x, y, Double.MAX_VALUE);
                if (beyond < least) {
                    least = beyond;
                    at = k;
                }
                continue;
            }
            double distance = root.nearest(x, y, least);
            if (distance < least) {
                least = distance;
                at = k;
            }
        }
        return new LeastDentine(least, depth, Math.toDegrees(lumen.directions().angle(at)));
    }

    /** The root at a depth as an ellipse and as a polygon in it. */
    private final class Outline {
        private final RootOutline ellipse;
        private final double cos;
        private final double sin;
        private final double[] x = new double[POINTS + 1];
        private final double[] y = new double[POINTS + 1];
        private final double apart;

        Outline(double depthMm) {
            ellipse = at(depthMm);
            double azimuth = Math.toRadians(ellipse.azimuthDeg());
            cos = Math.cos(azimuth);
            sin = Math.sin(azimuth);
            double longest = 0;
            for (int i = 0; i <= POINTS; i++) {
                double along = ellipse.wideMm() / 2 * COS[i % POINTS];
                double across = ellipse.narrowMm() / 2 * SIN[i % POINTS];
                x[i] = centreFirstMm + along * cos - across * sin;
                y[i] = centreSecondMm + along * sin + across * cos;
                if (i > 0) {
                    double dx = x[i] - x[i - 1];
                    double dy = y[i] - y[i - 1];
                    longest = Math.max(longest, dx * dx + dy * dy);
                }
            }
            apart = Math.sqrt(longest) * FEW;
        }

        /** Whether a place is within the root. */
        boolean holds(double px, double py) {
            double dx = px - centreFirstMm;
            double dy = py - centreSecondMm;
            double along = (dx * cos + dy * sin) / ellipse.wideMm();
            double across = (dy * cos - dx * sin) / ellipse.narrowMm();
            return along * along + across * across <= 0.25;
        }

        /** Distance of the nearest point if that is less than a bound, or anything that is not. */
        double nearest(double px, double py, double boundMm) {
            double least = boundMm;
            for (int i = 0; i < POINTS; i += FEW) {
                double dx = px - x[i];
                double dy = py - y[i];
                // what stands around this point is no nearer than half of the way to the next looked at
                double could = least + apart / 2;
                if (could > 0 && dx * dx + dy * dy < could * could) {
                    for (int j = i - FEW / 2; j < i + FEW / 2; j++) {
                        least = Math.min(least, side(px, py, j < 0 ? j + POINTS : j));
                    }
                }
            }
            return least;
        }

        private double side(double px, double py, int i) {
            double dx = x[i + 1] - x[i];
            double dy = y[i + 1] - y[i];
            double share = ((px - x[i]) * dx + (py - y[i]) * dy) / (dx * dx + dy * dy);
            double held = Math.max(0, Math.min(1, share));
            double away = px - x[i] - held * dx;
            double aside = py - y[i] - held * dy;
            return Math.sqrt(away * away + aside * aside);
        }
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
}
