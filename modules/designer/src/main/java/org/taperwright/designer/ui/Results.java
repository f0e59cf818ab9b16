package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Desk;

/**
 * What follows from the design in the window, computed off the event thread. Results of an earlier state of the same
 * design stay and are marked outdated until newer ones come; another design's never stay.
 */
final class Results {
    private final Desk desk;
    private final List<Consumer<State>> listeners = new ArrayList<>();
    private Optional<ThingId> subject = Optional.empty();
    private State state = State.EMPTY;

    /**
     * What is known at the moment.
     *
     * @param assessment the last one that could be made of this design
     * @param readings what each metric reads of it, in the metrics' order
     * @param bands both bench tests of it with their bands; present with the assessment
     * @param outdated whether the design has changed since
     * @param faults what is impossible or unusual about the design as it stands
     * @param trouble why there is no newer assessment, where that is not by the design's faults; may be empty
     */
    record State(
            Optional<Assessment> assessment,
            List<Reading> readings,
            Optional<BenchBands> bands,
            boolean outdated,
            List<Fault> faults,
            String trouble) {
        static final State EMPTY = new State(Optional.empty(), List.of(), Optional.empty(), false, List.of(), "");

        State {
            readings = List.copyOf(readings);
            faults = List.copyOf(faults);
        }
    }

    /** What the background makes: the assessment, and what each metric reads of it, which samples for its band. */
    private record Computed(AssessmentResult result, List<Reading> readings, Optional<BenchBands> bands) {
        static Computed of(Design design, KnownAlloys alloys, Progress progress) {
            AssessmentResult result = Assessments.of(design, alloys, progress);
            if (result instanceof AssessmentResult.Assessed assessed) {
                return new Computed(
                        result,
                        Metrics.all().stream()
                                .map(metric -> metric.read(assessed.assessment()))
                                .toList(),
                        Optional.of(BenchBands.of(assessed.assessment())));
            }
            return new Computed(result, List.of(), Optional.empty());
        }
    }

    Results(Desk desk, OpenDesign open) {
        this.desk = desk;
        open.onShown(this::begin);
    }

    /** Calls back whenever something else is known. */
    void onChange(Consumer<State> listener) {
        listeners.add(listener);
    }

    private void begin(OpenDesign open) {
        boolean other = !open.id().equals(subject);
        subject = open.id();
        if (other) {
            become(State.EMPTY);
        }
        if (open.shown().isEmpty() || subject.isEmpty()) {
            return;
        }
        Design design = open.shown().get();
        ThingId asked = subject.get();
        KnownAlloys alloys = open.alloys();
        boolean same = state.assessment()
                .filter(last -> last.design().equals(design))
                .filter(last -> alloys.find(design.alloy()).equals(Optional.of(last.alloy())))
                .isPresent();
        if (same && !state.outdated()) {
            return;
        }
        if (state.assessment().isPresent()) {
            become(new State(state.assessment(), state.readings(), state.bands(), true, state.faults(), ""));
        }
        desk.compute(this, "Assess " + design.name(), progress -> Computed.of(design, alloys, progress), outcome -> {
            if (subject.filter(asked::equals).isPresent()) {
                become(next(outcome));
            }
        });
    }

    private State next(Outcome<Computed> outcome) {
        if (outcome instanceof Outcome.Current<Computed> current) {
            return known(current.value(), false);
        }
        if (outcome instanceof Outcome.Outdated<Computed> outdated) {
            return known(outdated.value(), true);
        }
        String trouble = outcome instanceof Outcome.Failed<Computed> failed
                ? "Not computed: " + failed.reason()
                : "The computation was stopped; any change starts it again.";
        return new State(state.assessment(), state.readings(), state.bands(), true, state.faults(), trouble);
    }

    private State known(Computed computed, boolean outdated) {
        AssessmentResult result = computed.result();
        if (result instanceof AssessmentResult.Assessed assessed) {
            return new State(
                    Optional.of(assessed.assessment()),
                    computed.readings(),
                    computed.bands(),
                    outdated,
                    assessed.assessment().remarks(),
                    "");
        }
        return new State(
                state.assessment(),
                state.readings(),
                state.bands(),
                true,
                ((AssessmentResult.Refused) result).faults(),
                "");
    }

    private void become(State next) {
        state = next;
        List.copyOf(listeners).forEach(listener -> listener.accept(next));
    }
}
