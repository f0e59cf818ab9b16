package org.taperwright.shaping.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Fault.Weight;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.SequenceRule;
import org.taperwright.shaping.sequence.SequenceRules;
import org.taperwright.shaping.sequence.Step;

class SequenceRulesTest {
    private static final Canal CANAL = Given.canal(new Opening(0, 0.8, 0.8, 0), new Opening(16, 0.15, 0.15, 0));

    @Test
    void everyRuleSaysWhatItChecksAndFromWhere() {
        assertThat(SequenceRules.all())
                .extracting(SequenceRule::id)
                .doesNotHaveDuplicates()
                .hasSize(16);
        assertThat(SequenceRules.all()).allSatisfy(rule -> {
            assertThat(rule.explanation()).endsWith(".");
            assertThat(rule.source()).isNotBlank();
        });
    }

    @Test
    void aPlainSequenceHasNoRemark() {
        List<Instrument> files = List.of(Given.hand(10, 0.02), Given.hand(20, 0.02), Given.hand(25, 0.02));
        assertThat(check(Given.arranged(CANAL, 22, files))).isEmpty();
    }

    @Test
    void aJumpOfTwoSizesByHandIsRemarked() {
        List<Fault> faults = check(Given.arranged(CANAL, 22, List.of(Given.hand(20, 0.02), Given.hand(30, 0.02))));
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[1].instrument");
            assertThat(fault.what()).isEqualTo("the end of the canal is widened from 0.20 mm to 0.30 mm in one step");
            assertThat(fault.expected()).contains("size 25");
        });
    }

    @Test
    void aJumpOfTwoSizesIsAllowedWhenPoweredAndThreeAreNot() {
        assertThat(check(Given.arranged(CANAL, 22, List.of(Given.rotary(25, 0.04)))))
                .isEmpty();
        assertThat(places(Given.arranged(CANAL, 22, List.of(Given.rotary(30, 0.04)))))
                .containsExactly("steps[0].instrument");
    }

    @Test
    void aStepShortOfTheEndDoesNotCountAsAJump() {
        assertThat(check(Given.arranged(CANAL, 14, List.of(Given.hand(80, 0.02)))))
                .isEmpty();
    }

    @Test
    void aSmallerFileAfterALargerIsOutOfOrderUnlessItRecapitulates() {
        List<Fault> faults = check(Given.arranged(
                CANAL,
                22,
                List.of(Given.hand(20, 0.02), Given.hand(25, 0.02), Given.hand(20, 0.04), Given.hand(10, 0.02))));
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[2]");
            assertThat(fault.what()).isEqualTo("20/.04 comes to the working length after 25/.02");
            assertThat(fault.expected()).contains("before step 2");
        });
    }

    @Test
    void aStepThatIsNowhereWiderIsIdle() {
        assertThat(places(Given.arranged(CANAL, 22, List.of(Given.hand(20, 0.04), Given.hand(20, 0.02)))))
                .containsExactly("steps[1]");
    }

    @Test
    void anInstrumentWithAnImpossibleDesignIsNamed() {
        List<Fault> faults = check(Given.arranged(CANAL, 22, List.of(Given.hand(25, -0.05))));
        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.weight()).isEqualTo(Weight.IMPOSSIBLE);
            assertThat(fault.where()).isEqualTo("steps[0].instrument");
            assertThat(fault.what()).startsWith("the design of instrument is impossible at taper[0]");
        });
    }

    @Test
    void aShortInstrumentCannotReach() {
        Canal canal = new Canal("", CANAL.pieces(), CANAL.openings(), List.of(), 12, 27, "", "");
        List<Fault> faults = check(Given.arranged(canal, 26, List.of(Given.hand(25, 0.02))));
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.weight()).isEqualTo(Weight.IMPOSSIBLE);
            assertThat(fault.where()).isEqualTo("steps[0].depthMm");
            assertThat(fault.what()).isEqualTo("the instrument is 25 mm long and cannot reach 26 mm");
        });
    }

    @Test
    void aDepthBeyondTheWorkingLengthOrOutsideTheCanalIsRemarked() {
        assertThat(one(arranged(Given.hand(15, 0.02), Given.step(Given.hand(15, 0.02), 22.5)))
                        .what())
                .isEqualTo("22.5 mm is 0.5 mm beyond the working length of 22 mm");
        assertThat(one(arranged(Given.hand(15, 0.02), Given.step(Given.hand(15, 0.02), 5)))
                        .what())
                .contains("outside the canal");
    }

    @Test
    void aPoweredStepNeedsAMotorASpeedAndATorqueLimit() {
        Instrument rotary = Given.rotary(20, 0.04);
        Step bare = new InstrumentStep(
                Given.step(rotary, 22).instrument(), 22, Motion.ROTATION, Optional.empty(), Optional.empty(), 3, "");
        assertThat(places(Given.arranged(CANAL, Optional.empty(), List.of(rotary), List.of(bare))))
                .containsExactly("steps[0].instrument", "steps[0].speedRpm", "steps[0].torqueNmm");
    }

    @Test
    void aHandStepHasNoMotorSettings() {
        Instrument file = Given.hand(20, 0.02);
        assertThat(places(arranged(file, set(Motion.FILING, 300, 20)))).containsExactly("steps[0].speedRpm");
    }

    @Test
    void settingsOutsideTheInstrumentsWindowAreRemarked() {
        List<Fault> faults = check(arranged(Given.rotary(20, 0.04), set(Motion.ROTATION, 500, 30)));
        assertThat(faults).extracting(Fault::where).containsExactly("steps[0].speedRpm", "steps[0].torqueNmm");
        assertThat(faults.get(0).expected()).contains("250").contains("350");
        assertThat(faults.get(1).what()).contains("3").contains("N·cm");
    }

    @Test
    void aMotionTheInstrumentIsNotMeantForIsRemarked() {
        assertThat(one(arranged(Given.rotary(20, 0.04), set(Motion.FILING, 300, 20)))
                        .where())
                .isEqualTo("steps[0].motion");
    }

    @Test
    void aMotorThatCannotBeSetSoIsRemarked() {
        List<Fault> faults = check(arranged(Given.rotary(20, 0.04), set(Motion.ROTATION, 900, 45)));
        assertThat(faults)
                .filteredOn(fault -> fault.weight() == Weight.IMPOSSIBLE)
                .extracting(Fault::where)
                .containsExactly("steps[0].speedRpm", "steps[0].torqueNmm");
    }

    @Test
    void aMotorThatDoesNotReciprocateIsRemarked() {
        assertThat(check(arranged(Given.rotary(20, 0.04), set(Motion.RECIPROCATION, 300, 20))))
                .anySatisfy(fault -> {
                    assertThat(fault.weight()).isEqualTo(Weight.IMPOSSIBLE);
                    assertThat(fault.what()).isEqualTo("motor does not reciprocate");
                });
    }

    /** What rules of single instruments and their sizes remark; those on what stands between them have a test of their own. */
    private static List<Fault> check(ArrangedSequence arranged) {
        List<String> between = List.of("irrigation-missing", "recapitulation-missing", "patency-missing");
        return SequenceRules.all().stream()
                .filter(rule -> !between.contains(rule.id()))
                .flatMap(rule -> rule.check(arranged).stream())
                .sorted(java.util.Comparator.comparing(Fault::where))
                .toList();
    }

    private static InstrumentStep set(Motion motion, double rpm, double torqueNmm) {
        InstrumentStep plain = Given.step(Given.rotary(20, 0.04), 22);
        return new InstrumentStep(plain.instrument(), 22, motion, Optional.of(rpm), Optional.of(torqueNmm), 3, "");
    }

    private static ArrangedSequence arranged(Instrument instrument, Step step) {
        return Given.arranged(CANAL, Optional.of(Given.motor()), List.of(instrument), List.of(step));
    }

    private static List<String> places(ArrangedSequence arranged) {
        return check(arranged).stream().map(Fault::where).toList();
    }

    private static Fault one(ArrangedSequence arranged) {
        List<Fault> faults = check(arranged);
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }
}
