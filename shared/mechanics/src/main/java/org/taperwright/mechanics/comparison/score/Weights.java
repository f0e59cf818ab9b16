package org.taperwright.mechanics.comparison.score;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much each metric counts, by its identifier: the user's own choice, never the program's. Finite and not below zero; a
 * metric that is not named, or has zero, does not count. Only their proportions matter.
 */
public record Weights(Map<String, Double> byMetric) {
    /** No metric counts. */
    public static final Weights NONE = new Weights(Map.of());

    public Weights {
        Map<String, Double> counting = new TreeMap<>();
        byMetric.forEach((metric, weight) -> {
            if (!(weight >= 0) || Double.isInfinite(weight)) {
                throw new IllegalArgumentException("the weight of " + metric + " is " + weight
                        + ", where a finite number not below zero was expected");
            }
            if (weight > 0) {
                counting.put(metric, weight);
            }
        });
        byMetric = Collections.unmodifiableMap(counting);
    }

    /** The weight of a metric; zero when it does not count. */
    public double of(String metric) {
        return byMetric.getOrDefault(metric, 0.0);
    }

    /** Whether nothing counts, so that there is no score. */
    public boolean isEmpty() {
        return byMetric.isEmpty();
    }

    /** The same with another weight for one metric. */
    public Weights with(String metric, double weight) {
        Map<String, Double> changed = new TreeMap<>(byMetric);
        changed.put(metric, weight);
        return new Weights(changed);
    }

    /** Sum of all weights. */
    public double total() {
        return byMetric.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
