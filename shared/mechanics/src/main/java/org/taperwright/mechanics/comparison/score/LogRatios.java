package org.taperwright.mechanics.comparison.score;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * Natural logarithms of a comparison's ratios to the datum, sample by sample: what scores by any weights are made of. Each metric
 * of each column is sampled when it is first asked for, and then kept. Safe for threads.
 */
public final class LogRatios {
    private final Comparison comparison;
    private final Map<Key, Sampled> kept = new ConcurrentHashMap<>();

    private record Key(String metric, int column) {}

    /** Those of a comparison. */
    public LogRatios(Comparison comparison) {
        this.comparison = comparison;
    }

    /** The comparison. */
    public Comparison comparison() {
        return comparison;
    }

    /** A metric of a column; zero for the datum. */
    Sampled of(Metric metric, int column) {
        return kept.computeIfAbsent(new Key(metric.id(), column), key -> {
            if (column == comparison.datum()) {
                return Sampled.known(0);
            }
            return metric.sampled(comparison.columns().get(column))
                    .over(metric.sampled(comparison.columns().get(comparison.datum())))
                    .map(Math::log);
        });
    }
}
