package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;

/** ISO 3630-1:1992 / ANSI/ADA 28, K-type files; from memory, medium confidence. */
class StandardLimitsTest {
    @Test
    void aSize25FileMayTake120GrammeCentimetresInBendingAndMustBear30InTorsion() {
        var file = BenchDesigns.of("square", 0.25, 0.02);
        assertThat(StandardLimits.greatestBendingMoment(file)).hasValueSatisfying(limit -> {
            assertThat(limit.valueNmm()).isCloseTo(11.77, within(0.005));
            assertThat(limit.upper()).isTrue();
            assertThat(limit.source()).contains("ISO 3630-1", "memory");
        });
        assertThat(StandardLimits.leastTorque(file)).hasValueSatisfying(limit -> {
            assertThat(limit.valueNmm()).isCloseTo(2.94, within(0.005));
            assertThat(limit.upper()).isFalse();
        });
        assertThat(StandardLimits.leastAngleDeg(file)).contains(360.0);
    }

    @Test
    void otherTapersSizesAndKindsHaveNoLimit() {
        assertThat(StandardLimits.leastTorque(BenchDesigns.of("square", 0.25, 0.04)))
                .isEmpty();
        assertThat(StandardLimits.leastTorque(BenchDesigns.of("square", 0.10, 0.02)))
                .isEmpty();
        assertThat(StandardLimits.leastTorque(BenchDesigns.of("square", 0.45, 0.02)))
                .isEmpty();
        assertThat(StandardLimits.leastTorque(BenchDesigns.of("square", 0.253, 0.02)))
                .isEmpty();
        assertThat(StandardLimits.leastTorque(BenchDesigns.of("scalloped", 0.25, 0.02)))
                .isEmpty();
        assertThat(StandardLimits.leastTorque(
                        BenchDesigns.of("triangle", 0.25, List.of(new TaperSegment(0, 16, 0.02)), Motion.REAMING)))
                .isEmpty();
    }
}
