package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;

class RodGridTest {
    private final Design twoTapers = BenchDesigns.of(
            "square", 0.25, List.of(new TaperSegment(0, 5.3, 0.08), new TaperSegment(5.3, 16, 0.02)), Motion.ROTATION);

    @Test
    void noStepCrossesABreakInTaperOrTheEndOfTheWorkingPart() {
        RodGrid grid = RodGrid.between(twoTapers, 3, 20);
        for (int step = 0; step < grid.steps(); step++) {
            double top = grid.levelMm(3 * step);
            double bottom = grid.levelMm(3 * step + 2);
            for (double breaks : new double[] {5.3, 16}) {
                assertThat(bottom < breaks && breaks < top).isFalse();
            }
        }
    }

    @Test
    void stepsFillTheRodFromTheLoadToTheClamp() {
        RodGrid grid = RodGrid.between(twoTapers, 3, 20);
        assertThat(grid.lengthMm()).isCloseTo(17, within(1e-12));
        assertThat(grid.levelMm(0)).isCloseTo(20, within(1e-9));
        assertThat(grid.levelMm(grid.nodes() - 1)).isCloseTo(3, within(1e-9));
    }

    /** A cone of the steepest taper from the thinnest needle to the thickest blank: by the logarithm of their ratio. */
    @Test
    void stepsAlongAConeGrowWithItsDiameter() {
        Design cone = BenchDesigns.of("square", 0.0501, List.of(new TaperSegment(0, 4.5, 0.5)), Motion.FILING);
        RodGrid grid = RodGrid.between(cone, 0, 4.5);
        for (int step = 0; step < grid.steps(); step++) {
            double d = cone.diameterMm(grid.levelMm(3 * step + 1));
            assertThat(grid.lengthMm(step) * 0.5 / d).isLessThan(1.02 / 40);
        }
        assertThat(grid.lengthMm()).isCloseTo(4.5, within(1e-12));
        assertThat(grid.steps()).isLessThan((int) (40 * Math.log(2.3001 / 0.0501)) + 2);
    }

    @Test
    void nodesAtABreakTakeTheSideOfTheirOwnStep() {
        RodGrid grid = RodGrid.between(twoTapers, 3, 20);
        long shaft = 0;
        for (int step = 0; step < grid.steps(); step++) {
            boolean middle = grid.levelMm(3 * step + 1) > 16;
            assertThat(grid.levelMm(3 * step) > 16).isEqualTo(middle);
            assertThat(grid.levelMm(3 * step + 2) > 16).isEqualTo(middle);
            shaft += middle ? 1 : 0;
        }
        assertThat(shaft).isPositive();
    }
}
