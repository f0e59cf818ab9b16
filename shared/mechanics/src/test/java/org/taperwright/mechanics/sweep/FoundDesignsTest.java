package org.taperwright.mechanics.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/** Designs that once came to grief in the long sweep, drawn again from their seeds. */
class FoundDesignsTest {
    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = ';', textBlock = """
            4193330016275966213; so short that nothing of it is free to turn
            -8796603504740353600; Newton's method fell upon a rod bent to and fro
            197092594700490712; a rod bent to and fro with a force that pushes back
            -1667880028869348243; the same of steel
            -6803345800057020374; splines between fins and a notched bar swung below zero
            -2902391795934911372; points within a millionth, which a triangulation takes for one
            -7305211479695003402; two thousand points blended with a rhombus took minutes
            -503532653989093725; a rhombus that grows eight fins, of which no helical factors are found
            806172501569318489; two thousand points blended with a double S at every sample of a band
            965148254923310220; hundreds of notches between two plain sections took more than a second
            2235869148518898047; lands, a triangle and three dozen points took the longest of three thousand
            -8511368938522201247; seven flutes between a triangle and a double S, whose blend is jagged, took more than a second
            -7603456060161050842; its band asked for eight thousand runs along the rod
            """)
    void givesNumbersOrFaults(long seed, String what) {
        assertThat(what).isNotBlank();
        SweepTest.hold(AnyDesign.of(seed));
    }

    @Test
    void anInstrumentThatTheTwistingTestHoldsWhollyIsRefused() {
        Design stub = Designs.with(BenchDesigns.of("square", 0.25, 0.02))
                .taper(java.util.List.of(new org.taperwright.mechanics.design.TaperSegment(0, 2, 0.02)))
                .lengthMm(2.5)
                .design();
        assertThat(Assessments.of(stub, Progress.NONE))
                .isInstanceOfSatisfying(
                        AssessmentResult.Refused.class,
                        refused -> assertThat(refused.faults())
                                .filteredOn(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                                .extracting(Fault::where)
                                .containsExactly("lengthMm"));
    }

    /** A force across the axis bends every stretch the same way, so the slope at the load is between chord and 90 degrees. */
    @ParameterizedTest
    @CsvSource({"-8796603504740353600", "-6803345800057020374"})
    void whatIsBentIsBentOneWay(long seed) {
        AssessmentResult result = Assessments.of(AnyDesign.of(seed).design(), Progress.NONE);
        if (result instanceof AssessmentResult.Assessed assessed) {
            BendingResult bending = assessed.assessment().bending();
            assertThat(bending.endSlopeDeg()).isBetween(45.0, 90.0);
            assertThat(bending.momentNmm()).isPositive();
        } else {
            assertThat(((AssessmentResult.Refused) result).faults())
                    .anyMatch(fault -> fault.what().startsWith("no equilibrium"));
        }
    }
}
