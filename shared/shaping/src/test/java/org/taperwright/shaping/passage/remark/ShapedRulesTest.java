package org.taperwright.shaping.passage.remark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.sequence.ArrangedSequence;

class ShapedRulesTest {
    private static final ArrangedSequence ONE = Given.arranged(Given.tube(0.3), 22, List.of(Given.rotary(20, 0.04)));

    private static ShapedSequence with(double reserve, double roomFilled) {
        StepOutcome ran = SequenceShaping.of(ONE, Progress.NONE).steps().get(0);
        TreeMap<Integer, StepOutcome> steps = new TreeMap<>();
        steps.put(
                0,
                new StepOutcome(
                        ran.bindDepthMm(),
                        ran.strokes(),
                        ran.removedMm3(),
                        ran.torque(),
                        reserve,
                        ran.damage(),
                        ran.damageLevelMm(),
                        ran.greatestStrain(),
                        ran.strainLevelMm(),
                        ran.engagedFirstMm(),
                        roomFilled,
                        ran.tipForceN(),
                        ran.tipOffsetMm(),
                        ran.last(),
                        ran.wall(),
                        ran.settled()));
        return new ShapedSequence(steps, Optional.empty(), List.of());
    }

    @Test
    void everyRuleSaysWhatItChecksAndFromWhere() {
        assertThat(ShapedRules.all()).hasSize(4).allSatisfy(rule -> {
            assertThat(rule.explanation()).endsWith(".");
            assertThat(rule.source()).isNotBlank();
        });
        assertThat(ShapedRules.check(ONE, with(2, 0.5))).isEmpty();
    }

    @Test
    void aReserveUnderTheMarginIsRemarkedAsAnIndex() {
        assertThat(ShapedRules.check(ONE, with(1.2, 0.5))).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[0]");
            assertThat(fault.what()).isEqualTo("the torsional reserve of 1.2 (an index) is under 1.5");
            assertThat(fault.expected()).contains("more strokes");
        });
    }

    @Test
    void aReserveHardlyUnderTheMarginDoesNotReadAsTheMargin() {
        assertThat(ShapedRules.check(ONE, with(1.4987, 0.5)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.what()).contains("reserve of 1.49 "));
    }

    @Test
    void chipsThatFillTheFlutesAreRemarked() {
        assertThat(ShapedRules.check(ONE, with(2, 1.4))).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("steps[0].strokes");
            assertThat(fault.what()).contains("140 %", "an estimate");
            assertThat(fault.expected()).contains("clean the flutes");
        });
    }

    /** A cone of 0.84 mm at the orifice in a root of 1.2 mm leaves 0.18 mm; in one of 0.7 mm it breaks through. */
    @Test
    void littleDentineIsRemarkedAndABreakIsSaidToBeOne() {
        assertThat(dentine(1.2)).contains("only 0.18 mm of dentine is left 0 mm below the orifice (an estimate)");
        assertThat(dentine(0.7)).contains("the canal breaks through the root's outline");
        assertThat(dentine(2.4)).isEmpty();
    }

    private static String dentine(double root) {
        Canal canal = new Canal(
                "canal",
                List.of(new CanalPiece(16, 0, 0)),
                List.of(new Opening(0, 0.3, 0.3, 0), new Opening(16, 0.3, 0.3, 0)),
                List.of(new RootOutline(0, root, root, 0), new RootOutline(16, root, root, 0)),
                6,
                22,
                "",
                "");
        ArrangedSequence arranged = Given.arranged(canal, 22, List.of(Given.blunt(20, 0.04)));
        return new ThinDentine()
                .check(arranged, SequenceShaping.of(arranged, Progress.NONE)).stream()
                        .map(fault -> fault.what())
                        .findFirst()
                        .orElse("");
    }

    /** The steel law is tested to 2 %: 0.42 mm on a radius of 5 mm is 4 %. */
    @Test
    void strainBeyondWhatWasTestedIsMarkedOnTheStep() {
        Canal curved = new Canal(
                "curved",
                List.of(new CanalPiece(9, 0, 0), new CanalPiece(5, 57.3, 0), new CanalPiece(2, 0, 0)),
                List.of(new Opening(0, 0.9, 0.9, 0), new Opening(16, 0.3, 0.3, 0)),
                List.of(),
                6,
                22,
                "",
                "");
        ArrangedSequence arranged = Given.arranged(curved, 22, List.of(Given.rotary(25, 0.06), Given.hand(20, 0.02)));
        ShapedSequence shaped = SequenceShaping.of(arranged, Progress.NONE);
        assertThat(shaped.steps()).hasSize(2);
        List<Fault> marks = new StrainRange().check(arranged, shaped);
        assertThat(marks).singleElement().satisfies(mark -> {
            assertThat(mark.weight()).isEqualTo(Fault.Weight.UNUSUAL);
            assertThat(mark.where()).isEqualTo("steps[0].instrument");
            assertThat(mark.what()).contains("strained by").contains("tested for");
            assertThat(mark.expected()).contains("tested from 0.6 % to 2 %");
        });
    }
}
