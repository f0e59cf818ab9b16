package org.taperwright.shaping.passage.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.passage.Third;

/** A cone 20/.04 to the end of a straight tube of 16 mm: everything about the wall is plane geometry. */
class WallAfterTest {
    private static final double TUBE_MM = 0.3;

    private static final Canal TUBE = new Canal(
            "tube",
            List.of(new CanalPiece(16, 0, 0)),
            List.of(new Opening(0, TUBE_MM, TUBE_MM, 0), new Opening(16, TUBE_MM, TUBE_MM, 0)),
            List.of(new RootOutline(0, 2, 2, 0), new RootOutline(16, 2, 2, 0)),
            6,
            22,
            "",
            "");

    @Test
    void whatIsWornFollowsFromConeAndTube() {
        WallAfter wall = run(TUBE, Given.blunt(20, 0.04)).steps().get(0).wall();
        // half the difference of diameters 8 mm from the tip
        assertThat(wall.innerMm(8)).isEqualTo((0.2 + 0.04 * 8 - TUBE_MM) / 2, within(2e-3));
        assertThat(wall.outerMm(8)).isEqualTo(wall.innerMm(8), within(1e-9));
        // worn by more than 0.02 mm where the cone is wider than 0.34 mm: 3.5 mm from the tip and more
        assertThat(wall.touchedShare(Third.CORONAL)).isEqualTo(1);
        assertThat(wall.touchedShare(Third.MIDDLE)).isEqualTo(1);
        assertThat(wall.touchedShare(Third.APICAL)).isEqualTo((16.0 / 3 - 3.5) / (16.0 / 3), within(0.03));
        assertThat(wall.touchedShare()).isEqualTo(12.5 / 16, within(0.01));
        assertThat(wall.transportedMm()).isEqualTo(0, within(1e-9));
    }

    @Test
    void theLeastDentineOfAThirdIsWhereTheConeIsWidest() {
        WallAfter wall = run(TUBE, Given.blunt(20, 0.04)).steps().get(0).wall();
        // a root of radius 1 mm less the cone's radius at the third's coronal end
        assertThat(thickness(wall.leastDentine(Third.CORONAL))).isEqualTo(1 - (0.2 + 0.04 * 16) / 2, within(2e-3));
        assertThat(thickness(wall.leastDentine(Third.APICAL))).isEqualTo(1 - (0.2 + 0.04 * 16 / 3) / 2, within(5e-3));
        assertThat(wall.leastDentine()).isEqualTo(wall.leastDentine(Third.CORONAL));
    }

    @Test
    void aLaterStepLeavesTheWallOfAnEarlierAsItWas() {
        List<StepOutcome> steps =
                run(TUBE, Given.blunt(20, 0.04), Given.blunt(40, 0.04)).steps();
        assertThat(steps.get(0).wall().innerMm(8)).isEqualTo((0.2 + 0.04 * 8 - TUBE_MM) / 2, within(2e-3));
        assertThat(steps.get(1).wall().innerMm(8)).isEqualTo((0.4 + 0.04 * 8 - TUBE_MM) / 2, within(2e-3));
    }

    /** Passing stations over must not change which is found. */
    @Test
    void theLeastDentineIsThatOfTheStationWithTheLeast() {
        RootWall root = RootWall.about(
                List.of(
                        new RootOutline(0, 3, 2, 20),
                        new RootOutline(8, 1.6, 1.1, 50),
                        new RootOutline(16, 2, 1.4, 70)),
                0.12,
                -0.07);
        Lumen lumen = Lumen.of(
                Given.canal(new Opening(0, 0.9, 0.5, 80), new Opening(10, 0.6, 0.2, 30), new Opening(16, 0.2, 0.2, 0)),
                0.25,
                36);
        double least = IntStream.range(0, lumen.stations())
                .mapToDouble(j -> root.least(lumen, j).thicknessMm())
                .min()
                .orElseThrow();
        assertThat(root.least(lumen).thicknessMm()).isEqualTo(least);
    }

    @Test
    void aRootThatIsNotKnownHasNoLeastDentine() {
        WallAfter wall =
                run(Given.tube(TUBE_MM), Given.blunt(20, 0.04)).steps().get(0).wall();
        assertThat(wall.leastDentine()).isEmpty();
        assertThat(wall.leastDentine(Third.MIDDLE)).isEmpty();
    }

    private static double thickness(Optional<LeastDentine> least) {
        return least.orElseThrow().thicknessMm();
    }

    private static ShapedSequence run(Canal canal, Instrument... instruments) {
        return SequenceShaping.of(Given.arranged(canal, 22, List.of(instruments)), Progress.NONE);
    }
}
