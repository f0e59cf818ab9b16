package org.taperwright.mechanics.comparison.metrics;

import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Spread;

/** How readily the tip cuts ahead: its share of cutting, times the slenderness of its cone against one of 75°. */
public final class TipAggressiveness extends SampledMetric {
    private static final double USUAL_DEG = 75;

    /** For the service loader. */
    public TipAggressiveness() {
        super(
                new Declaration(
                        "tip-aggressiveness",
                        "Tip aggressiveness",
                        MetricGroup.GUIDANCE,
                        20,
                        "",
                        Direction.NEITHER,
                        Standing.INDEX,
                        "How readily the tip cuts ahead: its share of cutting, times the slenderness of its cone against one of 75°.",
                        "Weights of active, semi-active and passive tips, as the trade orders them: common practice, no source"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        TipKind kind = assessment.design().tip().kind();
        Spread weight = weight(kind);
        double cone = Math.tan(Math.toRadians(USUAL_DEG / 2))
                / Math.tan(Math.toRadians(assessment.design().tip().angleDeg() / 2));
        return LatinHypercube.of("tip." + kind.word())
                .sample(weight.middle() * cone, shares -> weight.at(shares[0]) * cone);
    }

    private static Spread weight(TipKind kind) {
        return switch (kind) {
            case ACTIVE -> Spread.even(0.8, 1.2);
            case SEMI_ACTIVE -> Spread.even(0.3, 0.7);
            case PASSIVE -> Spread.even(0, 0.2);
        };
    }
}
