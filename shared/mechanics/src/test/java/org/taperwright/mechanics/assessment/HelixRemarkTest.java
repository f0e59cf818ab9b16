package org.taperwright.mechanics.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

class HelixRemarkTest {
    /** A square of 1 mm with four edges: {@code t = 2 pi flutes per mm / 4}, so 2.5 flutes per mm are just below 4. */
    private static Design winding(double flutesPerMm) {
        return Designs.with(BenchDesigns.of("square", 1, 0))
                .flutes(List.of(new FluteStation(0, 1), new FluteStation(8, flutesPerMm)))
                .design();
    }

    private static List<Fault> onHelix(Design design) {
        AssessmentResult.Assessed assessed = (AssessmentResult.Assessed) Assessments.of(design, Progress.NONE);
        return assessed.assessment().remarks().stream()
                .filter(remark -> remark.what().contains("validated"))
                .toList();
    }

    @Test
    void flutesThatWindBeyondWhatWasValidatedKeepTheirNumbersAndAreSaidToBe() {
        assertThat(onHelix(winding(2.6))).singleElement().satisfies(remark -> {
            assertThat(remark.weight()).isEqualTo(Fault.Weight.UNUSUAL);
            assertThat(remark.where()).isEqualTo("flutes[1].flutesPerMm");
            // atan(pi x 2.6 / 4) and atan(4 / 2)
            assertThat(remark.what())
                    .isEqualTo(
                            "at 8 mm from the tip the flutes wind at 63.9° from the axis, outside the range in which"
                                    + " stiffness and stress of turning flutes were validated; values there are those at 63.4°");
            assertThat(remark.expected()).isEqualTo("at most 63.4°, which is 2 pi times diameter over pitch = 4");
        });
    }

    @Test
    void flutesWithinWhatWasValidatedAreNotRemarkedOn() {
        assertThat(onHelix(winding(2.5))).isEmpty();
        assertThat(onHelix(winding(0))).isEmpty();
    }
}
