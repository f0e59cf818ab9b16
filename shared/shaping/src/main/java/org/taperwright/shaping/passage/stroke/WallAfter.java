package org.taperwright.shaping.passage.stroke;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.passage.Third;

/**
 * The wall as a step left it, against the canal before any step: how much was worn, how evenly, and how much dentine is left, by
 * third. Keeps the open space as it was then; the measures are worked out when they are asked for.
 */
public final class WallAfter {
    private final Canal canal;
    private final CanalGeometry geometry;
    private final Lumen after;
    private final WallChange change;
    private final Map<Third, LeastDentine> dentine = new ConcurrentHashMap<>();

    private WallAfter(CanalInWork work) {
        canal = work.canal();
        geometry = work.geometry();
        after = work.now().copy();
        change = WallChange.of(work.line(), work.before(), after);
    }

    /** The wall of a canal in work as it now is; what is done to the canal later does not change it. */
    public static WallAfter of(CanalInWork canal) {
        return new WallAfter(canal);
    }

    /** The open space. */
    public Lumen open() {
        return after.copy();
    }

    /** The direction nearest to the inside of the bend nearest to a depth; that of azimuth 0 where there is no bend. */
    public int insideAt(double depthMm) {
        return change.insideOfBend(station(depthMm));
    }

    /** How deep the wall is worn at a depth towards the inside of the nearest bend, mm. */
    public double innerMm(double depthMm) {
        return change.innerMm(station(depthMm));
    }

    /** How deep the wall is worn at a depth towards the outside of the nearest bend, mm. */
    public double outerMm(double depthMm) {
        return change.outerMm(station(depthMm));
    }

    /** Share of a third's wall worn by more than {@link CanalOutcome#TOUCHED_MM} (estimate). */
    public double touchedShare(Third third) {
        return change.touchedShare(CanalOutcome.TOUCHED_MM, first(third), last(third));
    }

    /** Share of the whole wall worn by more than {@link CanalOutcome#TOUCHED_MM} (estimate). */
    public double touchedShare() {
        return change.touchedShare(CanalOutcome.TOUCHED_MM);
    }

    /**
     * The largest transportation at any level of a third, towards the inside of the bend above 0 and towards its outside below (the
     * sign and the order hold, the size is an index).
     */
    public double transportedMm(Third third) {
        double largest = 0;
        for (int j = first(third); j <= last(third); j++) {
            double moved = change.innerMm(j) - change.outerMm(j);
            largest = Math.abs(moved) > Math.abs(largest) ? moved : largest;
        }
        return largest;
    }

    /** The largest transportation at any level, likewise. */
    public double transportedMm() {
        double largest = 0;
        for (Third third : Third.values()) {
            double moved = transportedMm(third);
            largest = Math.abs(moved) > Math.abs(largest) ? moved : largest;
        }
        return largest;
    }

    /** Where least dentine is left in a third, if the root's outline is known (estimate). */
    public Optional<LeastDentine> leastDentine(Third third) {
        return canal.root().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        dentine.computeIfAbsent(third, in -> RootWall.of(canal).least(after, first(in), last(in))));
    }

    /** Where least dentine is left, likewise. */
    public Optional<LeastDentine> leastDentine() {
        return Arrays.stream(Third.values())
                .flatMap(third -> leastDentine(third).stream())
                .min(Comparator.comparingDouble(LeastDentine::thicknessMm));
    }

    /** The station nearest to a depth. */
    private int station(double depthMm) {
        return Math.max(0, Math.min(after.stations() - 1, (int) Math.round(depthMm / after.spacingMm())));
    }

    private int first(Third third) {
        int at = (int) Math.ceil(third.fromMm(geometry) / after.spacingMm() - 1e-9);
        return Math.max(0, Math.min(after.stations() - 1, at));
    }

    private int last(Third third) {
        double to = third == Third.APICAL ? geometry.lengthMm() : third.toMm(geometry);
        int at = (int) Math.floor(to / after.spacingMm() + 1e-9);
        return Math.max(first(third), Math.min(after.stations() - 1, at));
    }
}
