package org.taperwright.mechanics.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;

class AssessmentsTest {
    private static Assessment assessed(Design design) {
        return ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment();
    }

    private static Design inAlloy(Design design, String alloy) {
        return new Design(
                design.name(),
                design.note(),
                design.tipDiameterMm(),
                design.taper(),
                design.shaftDiameterMm(),
                design.lengthMm(),
                design.sections(),
                design.flutes(),
                design.hand(),
                design.tip(),
                alloy,
                design.making(),
                design.motion());
    }

    private static Design fluted(Design design, double flutesPerMm) {
        return new Design(
                design.name(),
                design.note(),
                design.tipDiameterMm(),
                design.taper(),
                design.shaftDiameterMm(),
                design.lengthMm(),
                design.sections(),
                List.of(new FluteStation(0, flutesPerMm)),
                design.hand(),
                design.tip(),
                design.alloy(),
                design.making(),
                design.motion());
    }

    @Test
    void anAssessmentRemembersTheDesignItCameFrom() {
        Design design = BenchDesigns.of("square", 0.25, 0.02);
        assertThat(assessed(design).design()).isEqualTo(design);
    }

    @Test
    void aFlatBladeWithoutTurnsIsSaidToDependOnItsClampAndATurningOneIsNot() {
        assertThat(assessed(fluted(BenchDesigns.of("rhombus", 0.25, 0.02), 0.1)).remarks())
                .anyMatch(remark -> remark.what().contains("how the blade is clamped"));
        assertThat(assessed(fluted(BenchDesigns.of("rhombus", 0.25, 0.02), 1)).remarks())
                .noneMatch(remark -> remark.what().contains("how the blade is clamped"));
    }

    @Test
    void anUnknownAlloyIsRefusedWithTheKnownOnesNamed() {
        Design design = inAlloy(BenchDesigns.of("square", 0.25, 0.02), "unobtainium");
        assertThat(Assessments.of(design, Progress.NONE))
                .isInstanceOfSatisfying(
                        AssessmentResult.Refused.class,
                        refused -> assertThat(refused.faults()).anySatisfy(fault -> {
                            assertThat(fault.where()).isEqualTo("alloy");
                            assertThat(fault.sentence()).contains("unobtainium", "stainless-steel");
                        }));
    }

    @Test
    void anImpossibleDesignIsRefusedWithTheFaultsOfTheChecks() {
        Design impossible = BenchDesigns.of("square", -0.25, 0.02);
        assertThat(Assessments.of(impossible, Progress.NONE))
                .isInstanceOfSatisfying(
                        AssessmentResult.Refused.class,
                        refused -> assertThat(refused.faults()).isNotEmpty());
    }

    @Test
    void anUnknownSectionIsRefused() {
        assertThat(Assessments.of(BenchDesigns.of("no-such-family", 0.25, 0.02), Progress.NONE))
                .isInstanceOf(AssessmentResult.Refused.class);
    }

    @Test
    void editingTheTaperDoesNotComputeSectionsAgain() {
        Assessment before = assessed(BenchDesigns.of("square", 0.25, 0.02));
        Assessment after = assessed(BenchDesigns.of("square", 0.25, 0.04));
        assertThat(after.stations().get(0).properties())
                .isSameAs(before.stations().get(0).properties());
        assertThat(after.bending().momentNmm()).isGreaterThan(before.bending().momentNmm());
    }

    @Test
    void aCancelledAssessmentStops() {
        Progress cancelled = new Progress() {
            @Override
            public void at(double fraction, String what) {
                assertThat(fraction).isBetween(0.0, 1.0);
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> Assessments.of(BenchDesigns.of("square", 0.25, 0.02), cancelled))
                .isInstanceOf(WorkCancelled.class);
    }

    /** Of a straight bar, on whose stiffness Poisson's ratio has no share. */
    @Test
    void theElasticTwistScalesWithTheModulusOfTheAlloyAndTheNickelTitaniumOneBendsMoreEasily() {
        Design straight = fluted(BenchDesigns.of("square", 0.25, 0.02), 0);
        Assessment steel = assessed(straight);
        Assessment niti = assessed(inAlloy(straight, "niti-superelastic"));
        double shear = steel.alloy().shearModulusMpa() / niti.alloy().shearModulusMpa();
        assertThat(niti.twisting().twistRadPerNmm() / steel.twisting().twistRadPerNmm())
                .isCloseTo(shear, within(1e-9 * shear));
        assertThat(niti.bending().momentNmm()).isLessThan(steel.bending().momentNmm());
    }

    @Property(tries = 40)
    void aThickerTipMakesAStifferAndStrongerInstrument(
            @ForAll @DoubleRange(min = 0.08, max = 1.0) double tip,
            @ForAll @DoubleRange(min = 0.01, max = 0.4) double more) {
        for (String family : List.of("square", "triangle", "scalloped")) {
            Assessment thin = assessed(BenchDesigns.of(family, tip, 0.04));
            Assessment thick = assessed(BenchDesigns.of(family, tip + more, 0.04));
            assertThat(thick.bending().momentNmm()).isGreaterThan(thin.bending().momentNmm());
            assertThat(thick.twisting().plasticTorqueNmm())
                    .isGreaterThan(thin.twisting().plasticTorqueNmm());
            assertThat(thick.twisting().twistRadPerNmm())
                    .isLessThan(thin.twisting().twistRadPerNmm());
        }
    }

    /** The flutes turn as much over a diameter in both, so that their factors are the same. */
    @Property(tries = 40)
    void twistAndTorqueFollowThePowersOfTheDiameterWithoutTaper(
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double tip,
            @ForAll @DoubleRange(min = 1.1, max = 1.8) double factor) {
        Assessment one = assessed(fluted(BenchDesigns.of("square", tip, 0), 0.8));
        Assessment other = assessed(fluted(BenchDesigns.of("square", tip * factor, 0), 0.8 / factor));
        double fourth = Math.pow(factor, 4);
        double third = Math.pow(factor, 3);
        assertThat(one.twisting().twistRadPerNmm() / other.twisting().twistRadPerNmm())
                .isCloseTo(fourth, within(1e-9 * fourth));
        assertThat(other.twisting().plasticTorqueNmm() / one.twisting().plasticTorqueNmm())
                .isCloseTo(third, within(1e-9 * third));
    }
}
