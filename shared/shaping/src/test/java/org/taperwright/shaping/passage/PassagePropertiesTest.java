package org.taperwright.shaping.passage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;

/** What must hold of any sequence in any canal. */
class PassagePropertiesTest {
    /** An instrument and how deep it goes. */
    record Use(Instrument instrument, double depthMm) {}

    @Provide
    Arbitrary<Canal> canals() {
        Arbitrary<Double> width = Arbitraries.doubles().between(0.1, 1.2);
        Arbitrary<Double> ratio = Arbitraries.doubles().between(0.3, 1);
        return Combinators.combine(width, ratio, width, ratio, width, ratio)
                .as((a, p, b, q, c, r) -> Given.canal(
                        new Opening(0, a, a * p, 0), new Opening(9, b, b * q, 20), new Opening(16, c, c * r, 90)));
    }

    @Provide
    Arbitrary<List<Use>> uses() {
        Arbitrary<Integer> size = Arbitraries.integers().between(6, 80);
        Arbitrary<Double> taper = Arbitraries.doubles().between(0, 0.1);
        Arbitrary<Double> depth = Arbitraries.doubles().between(7, 22);
        return Combinators.combine(size, taper, depth)
                .as((s, t, d) -> new Use(Given.hand(s, t), d))
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    private static List<StepGeometry> steps(Canal canal, List<Use> uses) {
        List<InstrumentStep> steps =
                uses.stream().map(u -> Given.step(u.instrument(), u.depthMm())).toList();
        ArrangedSequence arranged = Given.arranged(
                canal,
                java.util.Optional.empty(),
                uses.stream().map(Use::instrument).toList(),
                steps);
        return GeometricPassages.steps(arranged).stream()
                .map(java.util.Optional::orElseThrow)
                .toList();
    }

    private static double total(List<StepGeometry> steps) {
        return steps.stream()
                .flatMap(s -> s.enlargedMm3().values().stream())
                .mapToDouble(v -> v)
                .sum();
    }

    @Property(tries = 200)
    void aRepeatedStepDoesNothing(@ForAll("canals") Canal canal, @ForAll("uses") List<Use> uses) {
        List<Use> twice = new ArrayList<>(uses);
        twice.addAll(uses);
        List<StepGeometry> steps = steps(canal, twice);
        for (StepGeometry step : steps.subList(uses.size(), twice.size())) {
            assertThat(step.engaged()).isEmpty();
            assertThat(step.greatestExcessMm()).isZero();
            assertThat(step.enlargedMm3().values()).containsOnly(0.0);
        }
    }

    @Property(tries = 200)
    void theWholeVolumeDoesNotDependOnTheOrder(
            @ForAll("canals") Canal canal, @ForAll("uses") List<Use> uses, @ForAll Random random) {
        List<Use> shuffled = new ArrayList<>(uses);
        Collections.shuffle(shuffled, random);
        assertThat(total(steps(canal, shuffled))).isEqualTo(total(steps(canal, uses)), within(1e-5));
    }

    @Property(tries = 200)
    void noStepRemovesMoreThanItWouldAlone(@ForAll("canals") Canal canal, @ForAll("uses") List<Use> uses) {
        List<StepGeometry> together = steps(canal, uses);
        for (int i = 0; i < uses.size(); i++) {
            List<StepGeometry> alone = steps(canal, List.of(uses.get(i)));
            assertThat(total(List.of(together.get(i)))).isBetween(0.0, total(alone) + 1e-5);
        }
    }

    @Property(tries = 200)
    void sharesAndStretchesStayInTheCanal(@ForAll("canals") Canal canal, @ForAll("uses") List<Use> uses) {
        List<StepGeometry> steps = steps(canal, uses);
        for (int i = 0; i < uses.size(); i++) {
            double end = 0;
            for (StepGeometry.Stretch stretch : steps.get(i).engaged()) {
                assertThat(stretch.fromMm()).isGreaterThanOrEqualTo(end);
                assertThat(stretch.toMm()).isGreaterThan(stretch.fromMm());
                end = stretch.toMm();
            }
            assertThat(end).isLessThanOrEqualTo(uses.get(i).depthMm() - 6 + 1e-12);
            assertThat(steps.get(i).engagedShare().values())
                    .allSatisfy(s -> assertThat(s).isBetween(0.0, 1.0));
        }
    }

    @Property(tries = 100)
    void goingDeeperWithAWiderTaperNeverRemovesLess(@ForAll("canals") Canal canal, @ForAll("uses") List<Use> uses) {
        Use use = uses.get(0);
        Use deeper = new Use(use.instrument(), Math.min(22, use.depthMm() + 0.5));
        assertThat(total(steps(canal, List.of(deeper))))
                .isGreaterThanOrEqualTo(total(steps(canal, List.of(use))) - 1e-9);
    }
}
