package org.taperwright.shaping.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.SequenceRule;
import org.taperwright.shaping.sequence.Step;

/** Irrigation, patency and recapitulation, and instruments in a curve. */
class StepsBetweenTest {
    private static final Canal CANAL = Given.canal(new Opening(0, 0.8, 0.8, 0), new Opening(16, 0.15, 0.15, 0));
    private static final Instrument SMALL = Given.hand(10, 0.02);
    private static final ThingId ID = new ThingId("instrument");

    private final List<Step> steps = new ArrayList<>();
    private final List<Optional<Instrument>> instruments = new ArrayList<>();

    private void work(Instrument instrument) {
        steps.add(Given.step(instrument, 22));
        instruments.add(Optional.of(instrument));
    }

    private void irrigate(double depthMm) {
        steps.add(new Irrigation(NeedleGauge.G30, depthMm, 1, "saline", ""));
        instruments.add(Optional.empty());
    }

    private void recapitulate() {
        steps.add(new Recapitulation(ID, 1, ""));
        instruments.add(Optional.of(SMALL));
    }

    private void patency(Instrument instrument, double beyondMm) {
        steps.add(new Patency(ID, beyondMm, ""));
        instruments.add(Optional.of(instrument));
    }

    private List<Fault> check(SequenceRule rule) {
        return check(rule, CANAL);
    }

    private List<Fault> check(SequenceRule rule, Canal canal) {
        Sequence sequence = new Sequence("s", Optional.empty(), Optional.empty(), steps, "");
        return rule.check(new ArrangedSequence(sequence, canal, Optional.of(Given.motor()), instruments));
    }

    @Test
    void aCanalThatIsNotIrrigatedBetweenInstrumentsOrAtTheEndIsRemarked() {
        work(Given.hand(20, 0.02));
        irrigate(20);
        work(Given.hand(25, 0.02));
        work(Given.hand(30, 0.02));
        assertThat(check(new IrrigationMissing())).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[2]");
            assertThat(fault.what()).isEqualTo("the canal is not irrigated between steps 3 and 4, after step 4");
            assertThat(fault.expected()).isEqualTo("put an irrigation there");
        });
    }

    @Test
    void aRecapitulationNeedsNoIrrigationOfItsOwn() {
        work(Given.hand(20, 0.02));
        irrigate(20);
        recapitulate();
        work(Given.hand(25, 0.02));
        irrigate(20);
        assertThat(check(new IrrigationMissing())).isEmpty();
    }

    @Test
    void twoWideningInstrumentsWithNothingBroughtBackBetweenThemAreRemarked() {
        work(SMALL);
        work(Given.hand(20, 0.02));
        work(Given.hand(25, 0.02));
        recapitulate();
        work(Given.hand(30, 0.02));
        work(SMALL);
        work(Given.hand(35, 0.02));
        assertThat(check(new RecapitulationMissing())).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[2]");
            assertThat(fault.what()).isEqualTo("nothing is brought back to the working length between steps 2 and 3");
            assertThat(fault.expected()).contains("recapitulation");
        });
    }

    @Test
    void aWidenedEndWithoutPatencyIsRemarkedAndSaidNotToBeTaughtEverywhere() {
        work(SMALL);
        assertThat(check(new PatencyMissing())).isEmpty();
        work(Given.hand(20, 0.02));
        assertThat(check(new PatencyMissing())).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[1]");
            assertThat(fault.what()).isEqualTo("the end of the canal is widened, and no step sees to its patency");
            assertThat(fault.expected()).contains("patency step");
        });
        assertThat(new PatencyMissing().source()).contains("common practice, no source", "not taught everywhere");
        patency(SMALL, 0.5);
        assertThat(check(new PatencyMissing())).isEmpty();
    }

    @Test
    void patencyByAWideFileOrFarBeyondIsRemarked() {
        patency(SMALL, 0.5);
        patency(Given.hand(25, 0.02), 1.5);
        assertThat(check(new PatencySize()))
                .extracting(Fault::where)
                .containsExactly("steps[1].instrument", "steps[1].beyondMm");
        assertThat(check(new PatencySize()).get(0).what()).contains("size 25");
        assertThat(check(new PatencySize()).get(1).what()).isEqualTo("1.5 mm beyond the working length");
    }

    @Test
    void patencyMayPassTheWorkingLengthAndNoOtherStepMay() {
        patency(SMALL, 0.5);
        assertThat(check(new WorkingLength())).isEmpty();
        irrigate(22.5);
        assertThat(check(new WorkingLength()))
                .singleElement()
                .satisfies(fault -> assertThat(fault.where()).isEqualTo("steps[1].depthMm"));
    }

    @Test
    void aNeedleNearTheEndIsRemarked() {
        irrigate(21);
        irrigate(21.5);
        assertThat(check(new NeedleDepth())).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[1].depthMm");
            assertThat(fault.what()).contains("less than 1 mm short of the working length", "pressed beyond");
            assertThat(fault.expected()).contains("21 mm", "never let the needle bind");
        });
    }

    @Test
    void aWideSteelFileRoundABendIsRemarkedAndANarrowOneIsNot() {
        Canal bent = new Canal(
                "bent",
                List.of(new CanalPiece(8, 0, 0), new CanalPiece(8, 30, 0)),
                CANAL.openings(),
                List.of(),
                6,
                22,
                "",
                "");
        work(Given.hand(25, 0.02));
        work(Given.hand(30, 0.02));
        assertThat(check(new LargeSteelInCurve())).isEmpty();
        assertThat(check(new LargeSteelInCurve(), bent)).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[1].instrument");
            assertThat(fault.what()).isEqualTo("30/.02 of steel is taken round a bend of 30°");
            assertThat(fault.expected()).contains("nickel-titanium", "size 25");
        });
        assertThat(check(new ActiveTipInCurve(), bent)).isEmpty();
    }

    @Test
    void aCuttingTipRoundABendIsRemarked() {
        Canal bent = new Canal(
                "bent",
                List.of(new CanalPiece(8, 0, 0), new CanalPiece(8, 30, 0)),
                CANAL.openings(),
                List.of(),
                6,
                22,
                "",
                "");
        work(Given.withTip(Given.hand(20, 0.02), org.taperwright.mechanics.design.TipKind.ACTIVE));
        assertThat(check(new ActiveTipInCurve())).isEmpty();
        assertThat(check(new ActiveTipInCurve(), bent)).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[0].instrument");
            assertThat(fault.what()).isEqualTo("its tip cuts and is taken round a bend of 30°");
            assertThat(fault.expected()).contains("passive tip");
        });
    }
}
