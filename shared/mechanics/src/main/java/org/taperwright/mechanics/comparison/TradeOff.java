package org.taperwright.mechanics.comparison;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * Which designs no other dominates in two metrics, where one dominates another that is at least as good in both and better in one.
 * Judged sample by sample with the same draws for all designs, as ratios are ({@link Comparisons}): what two designs share cancels,
 * so designs whose bands overlap may still be told apart.
 *
 * @param first one metric
 * @param second the other
 * @param places one for each design; empty when neither more nor less of a metric is better by itself
 */
public record TradeOff(Metric first, Metric second, List<Place> places) {
    public TradeOff {
        places = List.copyOf(places);
    }

    /**
     * A design's place.
     *
     * @param undominated whether no other dominates it at the middle of all uncertain constants
     * @param share of the samples in which no other dominates it
     */
    public record Place(boolean undominated, double share) {
        private static final double EDGE = 0.05;

        /** How sure it is. */
        public Dominance dominance() {
            if (share >= 1 - EDGE) {
                return Dominance.CERTAINLY_UNDOMINATED;
            }
            return share > EDGE ? Dominance.POSSIBLY_UNDOMINATED : Dominance.DOMINATED;
        }
    }

    /** The trade-off between two metrics. */
    public static TradeOff of(List<Assessment> columns, Metric first, Metric second) {
        if (first.direction() == Metric.Direction.NEITHER || second.direction() == Metric.Direction.NEITHER) {
            return new TradeOff(first, second, List.of());
        }
        return new TradeOff(
                first,
                second,
                places(
                        columns.stream().map(column -> good(first, column)).toList(),
                        columns.stream().map(column -> good(second, column)).toList()));
    }

    /** The places of designs by two values of which more is better. */
    static List<Place> places(List<Sampled> across, List<Sampled> up) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < across.size(); i++) {
            Sampled free = Sampled.known(1);
            for (int j = 0; j < across.size(); j++) {
                free = free.with(dominated(across, up, i, j), (before, by) -> before * (1 - by));
            }
            places.add(new Place(free.value() > 0, free.mean()));
        }
        return places;
    }

    /** Turned so that more is better. */
    private static Sampled good(Metric metric, Assessment column) {
        Sampled sampled = metric.sampled(column);
        return metric.direction() == Metric.Direction.LESS ? sampled.map(value -> -value) : sampled;
    }

    /** 1 where design j dominates design i, else 0. */
    private static Sampled dominated(List<Sampled> across, List<Sampled> up, int i, int j) {
        Sampled first = across.get(j).with(across.get(i), Double::compare);
        Sampled second = up.get(j).with(up.get(i), Double::compare);
        return first.with(second, (a, b) -> a >= 0 && b >= 0 && a + b > 0 ? 1 : 0);
    }
}
