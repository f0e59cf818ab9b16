package org.taperwright.mechanics.comparison;

import org.taperwright.mechanics.quantity.Standing;

/**
 * A metric whose description is given once, as a {@link Declaration}; a class that extends it has only to read its value.
 */
public abstract class DeclaredMetric implements Metric {
    private final Declaration declaration;

    protected DeclaredMetric(Declaration declaration) {
        this.declaration = declaration;
    }

    /** What a metric says about itself; see {@link Metric} for each part. */
    public record Declaration(
            String id,
            String label,
            MetricGroup group,
            int order,
            String unit,
            Direction direction,
            Standing standing,
            String explanation,
            String source) {}

    @Override
    public final String id() {
        return declaration.id();
    }

    @Override
    public final String label() {
        return declaration.label();
    }

    @Override
    public final MetricGroup group() {
        return declaration.group();
    }

    @Override
    public final int order() {
        return declaration.order();
    }

    @Override
    public final String unit() {
        return declaration.unit();
    }

    @Override
    public final Direction direction() {
        return declaration.direction();
    }

    @Override
    public final Standing standing() {
        return declaration.standing();
    }

    @Override
    public final String explanation() {
        return declaration.explanation();
    }

    @Override
    public final String source() {
        return declaration.source();
    }
}
