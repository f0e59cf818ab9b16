package org.taperwright.shaping.passage.stroke;

import java.util.Optional;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Directions;
import org.taperwright.shaping.canal.Lumen;

/** What became of a canal's wall: the difference of its open space before and after. */
public final class WallChange {
    private static final double NOTHING_MM = 1e-9;

    private final Centreline line;
    private final Lumen before;
    private final Lumen after;
    private final Directions directions;

    private WallChange(Centreline line, Lumen before, Lumen after) {
        this.line = line;
        this.before = before;
        this.after = after;
        directions = before.directions();
    }

    /** The change of a canal in work so far. */
    public static WallChange of(CanalInWork canal) {
        return of(canal.line(), canal.before(), canal.now());
    }

    /** The change between two states of one canal's open space. */
    public static WallChange of(Centreline line, Lumen before, Lumen after) {
        return new WallChange(line, before, after);
    }

    /**
     * Share of the wall's area that was worn by more than a depth: elements {@code sqrt(r^2 + r_theta^2) (1 - kappa.e r)}.
     * Standing: estimate.
     *
     * @param depthMm how deep counts as touched, mm
     */
    public double touchedShare(double depthMm) {
        return touchedShare(depthMm, 0, before.stations() - 1);
    }

    /** The same of the wall from one station to another. */
    double touchedShare(double depthMm, int from, int to) {
        double touched = 0;
        double whole = 0;
        for (int j = from; j <= to; j++) {
            double weight = j == from || j == to ? 0.5 : 1;
            for (int k = 0; k < directions.count(); k++) {
                double area = weight * element(j, k);
                whole += area;
                touched += growthMm(j, k) > depthMm ? area : 0;
            }
        }
        return touched / whole;
    }

    /** How evenly the canal was widened at a distance from a depth, towards its nearest bend or azimuth 0 where it has none. */
    public Transportation at(double endMm, double fromEndMm) {
        int station = (int) Math.round((endMm - fromEndMm) / before.spacingMm());
        int held = Math.max(0, Math.min(before.stations() - 1, station));
        int inside = insideOfBend(held);
        double inner = innerMm(held);
        double outer = outerMm(held);
        double larger = Math.max(inner, outer);
        Optional<Double> centring =
                larger > NOTHING_MM ? Optional.of(Math.min(inner, outer) / larger) : Optional.empty();
        double moved = 0;
        for (int axis = 0; axis < 2; axis++) {
            double along = axis == 0 ? directions.cos(inside) : directions.sin(inside);
            moved += along * (centroid(after, held, axis) - centroid(before, held, axis));
        }
        return new Transportation(fromEndMm, inner - outer, centring, moved);
    }

    /** How deep the wall is worn at a station towards the inside of the nearest bend, mm. */
    double innerMm(int station) {
        return growthMm(station, insideOfBend(station));
    }

    /** How deep the wall is worn at a station towards the outside of the nearest bend, mm. */
    double outerMm(int station) {
        return growthMm(station, (insideOfBend(station) + directions.count() / 2) % directions.count());
    }

    private static double centroid(Lumen lumen, int station, int axis) {
        return lumen.momentMm3(station, axis) / lumen.areaMm2(station);
    }

    private double growthMm(int station, int direction) {
        return after.radiusMm(station, direction) - before.radiusMm(station, direction);
    }

    private double element(int station, int direction) {
        int count = directions.count();
        double r = before.radiusMm(station, direction);
        double slope = (before.radiusMm(station, (direction + 1) % count)
                        - before.radiusMm(station, (direction + count - 1) % count))
                / (2 * directions.stepRad());
        double depth = before.depthMm(station);
        double bend =
                line.firstAt(depth) * directions.cos(direction) + line.secondAt(depth) * directions.sin(direction);
        return Math.hypot(r, slope) * (1 - bend * r);
    }

    /** The direction nearest to that of the bend nearest to a station; azimuth 0 where there is no bend. */
    int insideOfBend(int station) {
        for (int away = 0; away < before.stations(); away++) {
            for (int at : new int[] {station - away, station + away}) {
                double depth = before.depthMm(at);
                boolean curved =
                        at >= 0 && at < before.stations() && (line.firstAt(depth) != 0 || line.secondAt(depth) != 0);
                if (curved) {
                    double azimuth = Math.atan2(line.secondAt(depth), line.firstAt(depth));
                    int nearest = (int) Math.round(azimuth / directions.stepRad());
                    return Math.floorMod(nearest, directions.count());
                }
            }
        }
        return 0;
    }
}
