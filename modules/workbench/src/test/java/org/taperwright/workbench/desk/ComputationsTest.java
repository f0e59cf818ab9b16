package org.taperwright.workbench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Outcome;

class ComputationsTest {
    private final ByHand workers = new ByHand();
    private final ByHand eventThread = new ByHand();
    private final List<Outcome<Integer>> delivered = new ArrayList<>();
    private final Object slot = new Object();
    private final ShownWork shown = new ShownWork();
    private final Computations computations = new Computations(workers, eventThread, shown);

    @Test
    void aResultIsDeliveredOnTheEventThread() {
        computations.compute(slot, "Six times seven", progress -> 42, delivered::add);
        workers.runAll();
        assertThat(delivered).isEmpty();
        eventThread.runAll();
        assertThat(delivered).containsExactly(new Outcome.Current<>(42));
    }

    @Test
    void aNewerComputationSupersedesTheOlderWhoseOutcomeIsNotDelivered() {
        computations.compute(slot, "Old", progress -> 1, delivered::add);
        computations.compute(slot, "New", progress -> 2, delivered::add);
        finishEverything();
        assertThat(delivered).containsExactly(new Outcome.Current<>(2));
    }

    @Test
    void aDragOfAHundredStepsComputesTheFirstAndTheLast() {
        AtomicInteger runs = new AtomicInteger();
        for (int step = 0; step < 100; step++) {
            int value = step;
            computations.compute(
                    slot,
                    "Step",
                    progress -> {
                        runs.incrementAndGet();
                        return value;
                    },
                    delivered::add);
            if (step == 0) {
                workers.runOne(); // the first is done before the second step, but not yet delivered
            }
        }
        finishEverything();
        assertThat(runs).hasValue(2);
        assertThat(delivered).containsExactly(new Outcome.Current<>(99));
    }

    @Test
    void theOlderComputationLearnsThatItShouldStop() {
        List<Boolean> seen = new ArrayList<>();
        computations.compute(
                slot,
                "Old",
                progress -> {
                    seen.add(progress.cancelled());
                    computations.compute(slot, "New", newer -> 2, delivered::add);
                    seen.add(progress.cancelled());
                    progress.check();
                    return 1;
                },
                delivered::add);
        finishEverything();
        assertThat(seen).containsExactly(false, true);
        assertThat(delivered).containsExactly(new Outcome.Current<>(2));
    }

    @Test
    void slotsDoNotDisturbEachOther() {
        computations.compute(slot, "One", progress -> 1, delivered::add);
        computations.compute(new Object(), "Two", progress -> 2, delivered::add);
        finishEverything();
        assertThat(delivered).containsExactly(new Outcome.Current<>(1), new Outcome.Current<>(2));
    }

    @Test
    void aFailureIsAnOutcomeThatSaysWhatFailedAndWhy() {
        computations.<Integer>compute(
                slot,
                "Bending",
                progress -> {
                    throw new IllegalStateException("no equilibrium was found");
                },
                delivered::add);
        finishEverything();
        assertThat(delivered).containsExactly(new Outcome.Failed<>("Bending failed: no equilibrium was found"));
    }

    @Test
    void whatTheUserStopsIsCancelled() {
        computations.compute(
                slot,
                "Long",
                progress -> {
                    shown.stop.run();
                    progress.check();
                    return 1;
                },
                delivered::add);
        finishEverything();
        assertThat(delivered).containsExactly(new Outcome.Cancelled<>());
    }

    @Test
    void whatIsShownIsTakenAwayWhateverHappens() {
        computations.compute(slot, "Good", progress -> 1, delivered::add);
        computations.<Integer>compute(
                new Object(),
                "Bad",
                progress -> {
                    throw new IllegalStateException("bad");
                },
                delivered::add);
        assertThat(shown.lines).isEqualTo(2);
        finishEverything();
        assertThat(shown.lines).isZero();
    }

    private void finishEverything() {
        while (workers.waiting() + eventThread.waiting() > 0) {
            workers.runAll();
            eventThread.runAll();
        }
    }

    /** Counts the lines that show, and keeps the button of the last. */
    private static final class ShownWork implements WorkDisplay {
        private int lines;
        private Runnable stop = () -> {};

        @Override
        public Line begin(String label, Runnable stopping) {
            lines++;
            stop = stopping;
            return new Line() {
                @Override
                public void at(double fraction, String what) {
                    assertThat(fraction).isBetween(0.0, 1.0);
                }

                @Override
                public void end() {
                    lines--;
                }
            };
        }
    }
}
