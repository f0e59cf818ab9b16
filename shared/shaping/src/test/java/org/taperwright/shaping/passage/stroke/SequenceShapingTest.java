package org.taperwright.shaping.passage.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** Sequences in plain canals; the reference point is 6 mm above the orifice, so a depth of 22 mm ends 16 mm below it. */
class SequenceShapingTest {
    private static final double WORKING_LENGTH = 22;

    /** Volume of cones about one axis: what is left is the wider of cone and tube at each level, pi/12 h (D² + D d + d²). */
    @Test
    void aConeInAStraightTubeLeavesTheUnionOfTheTwo() {
        ShapedSequence shaped = run(Given.tube(0.3), Given.blunt(20, 0.04));
        double before = Math.PI / 4 * 0.09 * 16;
        double meet = 0.1 / 0.04;
        double wide = 0.2 + 0.04 * 16;
        double cone = Math.PI / 12 * (16 - meet) * (wide * wide + wide * 0.3 + 0.09);
        double after = cone + Math.PI / 4 * 0.09 * meet;
        StepOutcome step = shaped.steps().get(0);
        assertThat(step.settled()).isTrue();
        assertThat(step.wholeRemovedMm3()).isEqualTo(after - before, within(2e-3 * after));
        assertThat(step.greatestStrain()).isLessThan(1e-12);
        assertThat(step.tipForceN()).isLessThan(1e-9);
        CanalOutcome canal = shaped.canal().orElseThrow();
        assertThat(sum(canal.afterMm3()) - sum(canal.beforeMm3())).isEqualTo(step.wholeRemovedMm3(), within(1e-9));
        assertThat(canal.transportation())
                .allSatisfy(moved -> assertThat(moved.transportedMm()).isEqualTo(0, within(1e-9)));
    }

    @Test
    void anInstrumentThatFitsEverywhereDoesNothing() {
        StepOutcome step = run(Given.tube(0.9), Given.blunt(20, 0.02)).steps().get(0);
        assertThat(step.wholeRemovedMm3()).isZero();
        assertThat(step.bindDepthMm()).isEqualTo(16, within(1e-9));
        assertThat(step.torque().totalNmm()).isZero();
        assertThat(step.damage()).isZero();
    }

    /** The published pattern: outwards at the canal's end, inwards at the curve (many studies; common knowledge, no one source). */
    @Test
    void aStiffInstrumentInACurveGoesOutwardAtTheEndAndInwardAtTheCurve() {
        ShapedSequence shaped = run(curved(), Given.rotary(20, 0.02), Given.rotary(25, 0.02), Given.rotary(30, 0.02));
        assertThat(shaped.faults()).isEmpty();
        List<Transportation> moved = shaped.canal().orElseThrow().transportation();
        assertThat(moved.get(0).transportedMm()).isNegative();
        assertThat(moved.stream()
                        .mapToDouble(Transportation::transportedMm)
                        .max()
                        .orElse(0))
                .isPositive();
        assertThat(shaped.steps()).allSatisfy(step -> {
            assertThat(step.settled()).isTrue();
            assertThat(step.damage()).isPositive();
            assertThat(step.reserve()).isFinite();
        });
        assertThat(shaped.canal().orElseThrow().touchedShare()).isBetween(0.01, 0.99);
    }

    @Test
    void filingNeitherTurnsNorTires() {
        StepOutcome step = run(curved(), Given.hand(25, 0.02)).steps().get(0);
        assertThat(step.torque().totalNmm()).isZero();
        assertThat(step.damage()).isZero();
        assertThat(step.wholeRemovedMm3()).isPositive();
    }

    @Test
    void anInstrumentWhoseTipDoesNotCutCannotEnterANarrowerCanal() {
        ShapedSequence shaped = run(Given.tube(0.15), Given.hand(40, 0.02));
        assertThat(shaped.steps()).isEmpty();
        assertThat(shaped.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.weight()).isEqualTo(Fault.Weight.IMPOSSIBLE);
            assertThat(fault.where()).isEqualTo("steps[0].depthMm");
            assertThat(fault.what()).contains("from its tip").contains("below the orifice");
        });
    }

    @Test
    void aDepthOutsideTheCanalIsAFault() {
        ShapedSequence shaped =
                SequenceShaping.of(Given.arranged(Given.tube(0.6), 23, List.of(Given.hand(20, 0.02))), Progress.NONE);
        assertThat(shaped.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.what()).contains("outside the canal"));
    }

    @Test
    void aStepThatCannotBeMadeLeavesTheCanalToTheOthers() {
        List<Instrument> instruments = List.of(Given.rotary(20, 0.02), Given.hand(140, 0.02), Given.rotary(25, 0.02));
        ShapedSequence shaped =
                SequenceShaping.of(Given.arranged(curved(), WORKING_LENGTH, instruments), Progress.NONE);
        ShapedSequence without = run(curved(), instruments.get(0), instruments.get(2));
        assertThat(shaped.byPlace().keySet()).containsExactly(0, 2);
        assertThat(shaped.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[1].depthMm");
            assertThat(fault.what()).contains("below the orifice");
        });
        assertThat(sum(shaped.canal().orElseThrow().afterMm3()))
                .isEqualTo(sum(without.canal().orElseThrow().afterMm3()), within(1e-12));
    }

    @Test
    void anImpossibleCanalIsNotShaped() {
        ShapedSequence shaped = run(Given.tube(0), Given.hand(20, 0.02));
        assertThat(shaped.canal()).isEmpty();
        assertThat(shaped.faults())
                .allSatisfy(fault -> assertThat(fault.where()).startsWith("canal."));
    }

    @Test
    void aCancelledSequenceStops() {
        Progress stop = new Progress() {
            @Override
            public void at(double fraction, String what) {
                assertThat(what).startsWith("step ");
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        ArrangedSequence arranged = Given.arranged(curved(), WORKING_LENGTH, List.of(Given.rotary(25, 0.04)));
        assertThatThrownBy(() -> SequenceShaping.of(arranged, stop)).isInstanceOf(WorkCancelled.class);
    }

    private static double sum(java.util.Map<Third, Double> volumes) {
        return volumes.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static Canal curved() {
        return new Canal(
                "curved",
                List.of(new CanalPiece(9, 0, 0), new CanalPiece(5, 40, 0), new CanalPiece(2, 0, 0)),
                List.of(new Opening(0, 0.9, 0.9, 0), new Opening(16, 0.22, 0.22, 0)),
                List.of(),
                6,
                WORKING_LENGTH,
                "",
                "");
    }

    private static ShapedSequence run(Canal canal, Instrument... instruments) {
        return SequenceShaping.of(Given.arranged(canal, WORKING_LENGTH, List.of(instruments)), Progress.NONE);
    }
}
