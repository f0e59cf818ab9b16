package org.taperwright.mechanics.comparison;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.cutting.CuttingGeometries;
import org.taperwright.mechanics.cutting.CuttingGeometry;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.helix.NoFactors;
import org.taperwright.mechanics.work.BoundedCache;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * A design of which only a few metrics are wanted, without bands, as of thousands behind a map: each metric computes no more than
 * it must ({@link Metric#glance}). Values are kept by all that enters them, the design but for its name and note and the alloy's
 * numbers; the last {@value #KEPT} of them, as long as the program, and so the model, is the same.
 */
public final class Glance {
    private static final int KEPT = 50_000;
    private static final BoundedCache<Key, OptionalDouble> CACHE = new BoundedCache<>(KEPT);

    private final Design design;
    private final Alloy alloy;
    private final Progress progress;
    private final BladeSections sections;
    private Optional<CuttingGeometry> cutting = Optional.empty();
    private Optional<Optional<Assessment>> assessment = Optional.empty();

    private record Key(Design design, Alloy alloy, String metric) {}

    private Glance(Design design, Alloy alloy, Progress progress) {
        this.design = design;
        this.alloy = alloy;
        this.progress = progress;
        sections = BladeSections.of(design);
    }

    /** A design without its name and note, which enter no number: like designs are then equal. */
    public static Design bare(Design design) {
        return Designs.with(design).name("").note("").design();
    }

    /** The values of metrics; none of a design that cannot be computed. */
    public static Map<Metric, Double> values(
            Design named, KnownAlloys alloys, List<Metric> metrics, Progress progress) {
        Design design = bare(named);
        Optional<Alloy> alloy = alloys.find(design.alloy());
        if (alloy.isEmpty()) {
            return Map.of();
        }
        AtomicReference<Optional<Glance>> glance = new AtomicReference<>(Optional.empty());
        Map<Metric, Double> values = new HashMap<>();
        for (Metric metric : metrics) {
            progress.check();
            OptionalDouble value = CACHE.get(new Key(design, alloy.get(), metric.id()), key -> {
                if (glance.get().isEmpty() && computable(design, alloys)) {
                    glance.set(Optional.of(new Glance(design, alloy.get(), progress)));
                }
                return glance.get().map(at -> at.value(metric)).orElseGet(OptionalDouble::empty);
            });
            value.ifPresent(known -> values.put(metric, known));
        }
        return values.size() == metrics.size() ? values : Map.of();
    }

    private static boolean computable(Design design, KnownAlloys alloys) {
        return DesignChecks.check(design, alloys).stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                && BladeSections.faults(design).isEmpty();
    }

    private OptionalDouble value(Metric metric) {
        try {
            OptionalDouble value = metric.glance(this);
            return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value : OptionalDouble.empty();
        } catch (Unsolved | NoFactors none) {
            // as an assessment would be refused
            return OptionalDouble.empty();
        }
    }

    /** The design. */
    public Design design() {
        return design;
    }

    /** Its edges at work. */
    public CuttingGeometry cutting() {
        if (cutting.isEmpty()) {
            cutting = Optional.of(CuttingGeometries.of(design, sections));
        }
        return cutting.get();
    }

    /**
     * The moment of the bending test, N mm, without the curve that leads to it.
     *
     * @throws Unsolved when there is no equilibrium
     */
    public double bendingMomentNmm() {
        return BendingTest.momentNmm(design, alloy, sections, BendingTest.ANGLE_DEG);
    }

    /** All that is known of it; nothing where an assessment is refused. */
    public Optional<Assessment> assessment() {
        if (assessment.isEmpty()) {
            AssessmentResult result = Assessments.of(design, new KnownAlloys(List.of(alloy)), progress);
            assessment = Optional.of(
                    result instanceof AssessmentResult.Assessed assessed
                            ? Optional.of(assessed.assessment())
                            : Optional.empty());
        }
        return assessment.get();
    }
}
