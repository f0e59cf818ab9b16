package org.taperwright.shaping.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StrokePlan;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** Irrigation, patency and recapitulation as a sequence is run; the canal's end is 16 mm below the orifice, 22 mm deep. */
class StepKindsTest {
    private static final ThingId ID = new ThingId("instrument");

    private static final Irrigation RINSE = new Irrigation(NeedleGauge.G30, 20, 1, "saline", "");

    private record Ran(ShapedSequence shaped, NeedleWatch needles) {}

    private static Ran run(Canal canal, List<Step> steps, List<Optional<Instrument>> instruments) {
        ArrangedSequence arranged = new ArrangedSequence(
                new Sequence("s", Optional.empty(), Optional.empty(), steps, ""), canal, Optional.empty(), instruments);
        NeedleWatch watch = new NeedleWatch(arranged);
        CanalInWork work = CanalInWork.of(canal, 0.1, 72);
        ShapedSequence shaped = SequenceShaping.run(
                PreparedSequence.of(arranged),
                work,
                ShapingConstants.USUAL,
                StrokePlan.USUAL,
                Mesh.FINE,
                watch,
                Progress.NONE);
        return new Ran(shaped, watch);
    }

    /** A canal that narrows evenly from 0.8 to 0.2 mm lets 0.32 mm in to 16 * 0.48 / 0.6 mm. */
    @Test
    void aNeedleReachesDeeperOnceTheCanalIsWidened() {
        Canal canal = Given.canal(new Opening(0, 0.8, 0.8, 0), new Opening(16, 0.2, 0.2, 0));
        Instrument wide = Given.blunt(40, 0.02);
        Ran ran = run(
                canal,
                List.of(RINSE, Given.step(wide, 22), RINSE),
                List.of(Optional.empty(), Optional.of(wide), Optional.empty()));
        assertThat(ran.shaped().faults()).isEmpty();
        assertThat(ran.shaped().byPlace().keySet()).containsExactly(1);
        assertThat(ran.needles().reaches().keySet()).containsExactly(0, 2);
        assertThat(ran.needles().reaches().get(0).flexibleMm()).isEqualTo(12.8, within(0.02));
        assertThat(ran.needles().reaches().get(2).flexibleMm()).isEqualTo(16, within(0.1));
    }

    /** Half a millimetre beyond the end of a tube of 0.15 mm a cone of 0.10 mm and 4 % is 0.12 mm wide: it passes and works nowhere. */
    @Test
    void aSmallFilePassesBeyondTheEndAndWorksNowhere() {
        Instrument small = Given.blunt(10, 0.0);
        Ran ran = run(Given.tube(0.15), List.of(new Patency(ID, 0.5, "")), List.of(Optional.of(small)));
        assertThat(ran.shaped().faults()).isEmpty();
        assertThat(ran.shaped().byPlace().get(0)).satisfies(step -> {
            assertThat(step.strokes()).isEqualTo(1);
            assertThat(step.wholeRemovedMm3()).isZero();
            assertThat(step.bindDepthMm()).isEqualTo(16, within(1e-9));
        });
    }

    /** What stands above the end of a cone of 0.10 mm and 4 % passed half a millimetre is one of 0.12 mm: it removes as much. */
    @Test
    void patencyWorksTheCanalWithWhatStandsAboveItsEnd() {
        Canal canal =
                Given.canal(new Opening(0, 0.9, 0.9, 0), new Opening(2, 0.3, 0.3, 0), new Opening(16, 0.2, 0.2, 0));
        Ran passed = run(canal, List.of(new Patency(ID, 0.5, "")), List.of(Optional.of(Given.blunt(10, 0.04))));
        Instrument wider = Given.blunt(12, 0.04);
        InstrumentStep once = Given.step(wider, 22).withStrokes(1);
        Ran worked = run(canal, List.of(once), List.of(Optional.of(wider)));
        assertThat(passed.shaped().faults()).isEmpty();
        double removed = worked.shaped().byPlace().get(0).wholeRemovedMm3();
        assertThat(removed).isPositive();
        assertThat(passed.shaped().byPlace().get(0).wholeRemovedMm3()).isEqualTo(removed, within(2e-3 * removed));
    }

    @Test
    void aBluntFileThatIsWiderThanTheEndDoesNotPass() {
        Ran ran = run(Given.tube(0.15), List.of(new Patency(ID, 0.02, "")), List.of(Optional.of(Given.hand(40, 0.02))));
        assertThat(ran.shaped().byPlace()).isEmpty();
        assertThat(ran.shaped().faults()).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[0].depthMm");
            assertThat(fault.what()).contains("below the orifice");
        });
    }

    @Test
    void aRecapitulationComesToTheWorkingLengthInACurve() {
        Canal canal = new Canal(
                "curved",
                List.of(new CanalPiece(9, 0, 0), new CanalPiece(5, 40, 0), new CanalPiece(2, 0, 0)),
                List.of(new Opening(0, 0.9, 0.9, 0), new Opening(16, 0.22, 0.22, 0)),
                List.of(),
                6,
                21.5,
                "",
                "");
        Instrument small = Given.hand(10, 0.02);
        Ran ran = run(canal, List.of(new Recapitulation(ID, 2, "")), List.of(Optional.of(small)));
        assertThat(ran.shaped().byPlace().get(0)).satisfies(step -> {
            assertThat(step.strokes()).isEqualTo(2);
            assertThat(step.last().depthMm(step.last().nodes() - 1)).isEqualTo(15.5, within(1e-9));
            assertThat(step.settled()).isTrue();
        });
    }
}
