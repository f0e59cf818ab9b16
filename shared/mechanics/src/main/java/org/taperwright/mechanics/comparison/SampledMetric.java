package org.taperwright.mechanics.comparison;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * A declared metric that hangs on uncertain constants: an estimate or an index. A class that extends it gives the value
 * with its samples; the band, and that of its ratio to another design's, follow.
 */
public abstract class SampledMetric extends DeclaredMetric {
    protected SampledMetric(Declaration declaration) {
        super(declaration);
    }

    @Override
    public abstract Sampled sampled(Assessment assessment);

    @Override
    public final Reading read(Assessment assessment) {
        return sampled(assessment).reading();
    }
}
