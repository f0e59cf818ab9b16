package org.taperwright.mechanics.comparison.metrics;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.mechanics.uncertainty.Spread;

/** Evenness of the edges about the axis, 1 - |sum of directions| / n, raised by the share of the circle in lands. */
public final class SelfCentring extends SampledMetric {
    /** Weight of lands against evenness: an assumption, spread widely. */
    private static final Spread LANDS = Spread.even(1, 5);

    private static final LatinHypercube CUBE = LatinHypercube.of("self-centring.lands");

    /** For the service loader. */
    public SelfCentring() {
        super(new Declaration(
                "self-centring",
                "Self-centring",
                MetricGroup.GUIDANCE,
                30,
                "",
                Direction.MORE,
                Standing.INDEX,
                "Evenness of the edges about the axis, 1 - |sum of directions| / n, raised by the share of the circle in lands.",
                "Directions of the trade (even edges and lands keep to the middle): common practice, no source"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("", "the self-centring"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        List<Edge> edges = assessment.stations().get(0).edges();
        if (edges.isEmpty()) {
            return CUBE.sample(0, shares -> 0);
        }
        double x = edges.stream().mapToDouble(edge -> Math.cos(edge.angle())).sum();
        double y = edges.stream().mapToDouble(edge -> Math.sin(edge.angle())).sum();
        double even = Math.max(0, 1 - Math.hypot(x, y) / edges.size());
        double lands = edges.stream().mapToDouble(Edge::landWidth).sum() / Math.PI;
        return CUBE.sample(even * (1 + LANDS.middle() * lands), shares -> even * (1 + LANDS.at(shares[0]) * lands));
    }
}
