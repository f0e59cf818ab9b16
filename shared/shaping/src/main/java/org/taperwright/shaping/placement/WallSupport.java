package org.taperwright.shaping.placement;

import org.taperwright.shaping.canal.Directions;
import org.taperwright.shaping.canal.Lumen;

/**
 * Support function h(s, theta) of the open space, linear in s between stations. Above the orifice the access opens:
 * {@code min(h(0) + 0.5 |s|, max(1.6 mm, h(0)))}; beyond the last station it stays as it is there.
 */
public final class WallSupport {
    private static final double FLARE = 0.5;
    private static final double ACCESS_MM = 1.6;

    private final Directions directions;
    private final double spacingMm;
    private final int stations;
    private final double[] support;

    private WallSupport(Lumen lumen) {
        directions = lumen.directions();
        spacingMm = lumen.spacingMm();
        stations = lumen.stations();
        support = new double[stations * directions.count()];
        for (int j = 0; j < stations; j++) {
            lumen.support(j, support, j * directions.count());
        }
    }

    /** The wall of an open space. */
    public static WallSupport of(Lumen lumen) {
        return new WallSupport(lumen);
    }

    /** Takes over what became of a station. */
    public void renew(Lumen lumen, int station) {
        lumen.support(station, support, station * directions.count());
    }

    /** The directions. */
    public Directions directions() {
        return directions;
    }

    /** Writes h at a depth in all directions, mm, from a place on, and answers the least. */
    public double at(double depthMm, double[] answer, int from) {
        int count = directions.count();
        double least = Double.MAX_VALUE;
        if (depthMm < 0) {
            for (int k = 0; k < count; k++) {
                double orifice = support[k];
                double h = Math.min(orifice - FLARE * depthMm, Math.max(ACCESS_MM, orifice));
                answer[from + k] = h;
                least = Math.min(least, h);
            }
            return least;
        }
        double place = depthMm / spacingMm;
        int below = Math.max(0, Math.min((int) place, stations - 2));
        double share = Math.min(1, place - below);
        int at = below * count;
        for (int k = 0; k < count; k++) {
            double above = support[at + k];
            double h = above + share * (support[at + count + k] - above);
            answer[from + k] = h;
            least = Math.min(least, h);
        }
        return least;
    }

    /** Smallest width of the section at a station over all directions, mm. */
    public double leastWidthMm(int station) {
        int at = station * directions.count();
        int half = directions.count() / 2;
        double least = Double.MAX_VALUE;
        for (int k = 0; k < half; k++) {
            least = Math.min(least, support[at + k] + support[at + k + half]);
        }
        return least;
    }
}
