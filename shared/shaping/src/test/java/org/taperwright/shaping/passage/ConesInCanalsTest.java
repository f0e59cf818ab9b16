package org.taperwright.shaping.passage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Instrument;

/** Volumes of truncated cones, {@code pi L (D² + D d + d²) / 12}, against the passage. */
class ConesInCanalsTest {
    private static final double EXACT = 1e-9;

    private static double frustum(double length, double d1, double d2) {
        return Math.PI * length * (d1 * d1 + d1 * d2 + d2 * d2) / 12;
    }

    private static double total(StepGeometry step) {
        return step.enlargedMm3().values().stream().mapToDouble(v -> v).sum();
    }

    private static StepGeometry only(Canal canal, double depth, Instrument instrument) {
        return GeometricPassages.steps(Given.arranged(canal, depth, List.of(instrument)))
                .get(0)
                .orElseThrow();
    }

    @Test
    void aConeInATubeEngagesFromWhereItIsWider() {
        // size 25, 4 %, at the end of a 0.45 mm tube: wider from 5 mm above the tip, 0.89 mm at the orifice
        StepGeometry step = only(Given.tube(0.45), 22, Given.cone(25, 0.04));
        assertThat(step.engaged()).hasSize(1);
        assertThat(step.engaged().get(0).fromMm()).isEqualTo(0, within(EXACT));
        assertThat(step.engaged().get(0).toMm()).isEqualTo(11, within(EXACT));
        assertThat(step.greatestExcessMm()).isEqualTo(0.44, within(EXACT));
        double expected = frustum(11, 0.89, 0.45) - Math.PI / 4 * 0.45 * 0.45 * 11;
        assertThat(total(step)).isEqualTo(expected, within(EXACT));
    }

    @Test
    void volumesAndSharesFallIntoTheirThirds() {
        StepGeometry step = only(Given.tube(0.45), 22, Given.cone(25, 0.04));
        double third = 16 / 3.0;
        double coronal = frustum(third, 0.89, 0.89 - 0.04 * third) - Math.PI / 4 * 0.45 * 0.45 * third;
        assertThat(step.enlargedMm3().get(Third.CORONAL)).isEqualTo(coronal, within(EXACT));
        assertThat(step.engagedShare().get(Third.CORONAL)).isEqualTo(1, within(EXACT));
        assertThat(step.engagedShare().get(Third.MIDDLE)).isEqualTo(1, within(EXACT));
        assertThat(step.engagedShare().get(Third.APICAL)).isEqualTo((11 - 2 * third) / third, within(EXACT));
    }

    @Test
    void aSecondConeOnlyAddsWhatTheFirstLeft() {
        // both to the end of a tube that is narrower than either: the second adds the difference of two frusta
        List<StepGeometry> steps = GeometricPassages.steps(
                        Given.arranged(Given.tube(0.1), 22, List.of(Given.cone(20, 0.02), Given.cone(25, 0.04))))
                .stream()
                .map(java.util.Optional::orElseThrow)
                .toList();
        double first = frustum(16, 0.52, 0.20);
        double second = frustum(16, 0.89, 0.25);
        assertThat(total(steps.get(0))).isEqualTo(first - Math.PI / 4 * 0.01 * 16, within(EXACT));
        assertThat(total(steps.get(1))).isEqualTo(second - first, within(EXACT));
    }

    @Test
    void aConeInAConicalCanalMeetsItWhereTheDiametersAreEqual() {
        // canal 1.0 to 0.2 mm (5 %), instrument 0.40 at the end with 2 %: equal 0.2 / 0.03 mm above the end
        Canal canal = Given.canal(new Opening(0, 1.0, 1.0, 0), new Opening(16, 0.2, 0.2, 0));
        StepGeometry step = only(canal, 22, Given.cone(40, 0.02));
        double length = 0.2 / 0.03;
        assertThat(step.engaged().get(0).fromMm()).isEqualTo(16 - length, within(EXACT));
        double where = 0.4 + 0.02 * length;
        assertThat(total(step)).isEqualTo(frustum(length, where, 0.4) - frustum(length, where, 0.2), within(EXACT));
    }

    @Test
    void aConicalTipEndsInAPoint() {
        // size 30, no taper, 90 degrees: the tip is a cone of 0.15 mm in a tube of 0.2 mm, wider from 0.1 mm on
        Instrument instrument = new Instrument(
                "",
                "",
                "",
                "",
                org.taperwright.shaping.instrument.Drive.HAND,
                Given.design(30, 0, 90, org.taperwright.mechanics.design.Motion.FILING),
                java.util.Optional.empty(),
                false,
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                0,
                "");
        StepGeometry step = only(Given.tube(0.2), 22, instrument);
        assertThat(step.engaged().get(0).toMm()).isEqualTo(15.9, within(EXACT));
        double expected = frustum(15.85, 0.3, 0.3) + frustum(0.05, 0.3, 0.2) - Math.PI / 4 * 0.04 * 15.9;
        assertThat(total(step)).isEqualTo(expected, within(EXACT));
    }

    @Test
    void theWorkingPartEndsAndTheShaftDoesNotCut() {
        // 20 mm of canal, 16 mm of working part: the first 4 mm are the shaft's
        Canal canal = new Canal(
                "",
                List.of(new CanalPiece(20, 0, 0)),
                List.of(new Opening(0, 0.2, 0.2, 0), new Opening(20, 0.2, 0.2, 0)),
                List.of(),
                2,
                22,
                "",
                "");
        StepGeometry step = only(canal, 22, Given.cone(25, 0.02));
        assertThat(step.engaged().get(0).fromMm()).isEqualTo(4, within(EXACT));
    }

    @Test
    void aCurveDoesNotChangeTheVolumeOfACentredInstrument() {
        Canal straight = Given.tube(0.3);
        Canal curved = new Canal(
                "",
                List.of(new CanalPiece(6, 0, 0), new CanalPiece(10, 40, 0)),
                straight.openings(),
                List.of(),
                6,
                22,
                "",
                "");
        Instrument instrument = Given.cone(30, 0.04);
        assertThat(total(only(curved, 22, instrument))).isEqualTo(total(only(straight, 22, instrument)), within(1e-12));
    }

    @Test
    void anOvalCanalIsTouchedAcrossItsNarrowSideFirst() {
        // 0.6 by 0.3 mm: a 0.4 mm cylinder is wider than the narrow side by 0.1 mm and removes two caps all along
        Canal canal = Given.canal(new Opening(0, 0.6, 0.3, 30), new Opening(16, 0.6, 0.3, 30));
        StepGeometry step = only(canal, 22, Given.cone(40, 0));
        assertThat(step.greatestExcessMm()).isEqualTo(0.1, within(EXACT));
        assertThat(total(step)).isEqualTo(16 * OvalOverlap.beyond(0.4, 0.6, 0.3), within(EXACT));
        assertThat(total(step)).isLessThan(Math.PI / 4 * 0.16 * 16);
    }

    @Test
    void anImpossibleCanalIsSaidToBeSoAndNothingIsComputed() {
        Canal canal = Given.canal(new Opening(0, 0.5, 0.5, 0));
        GeometricPassage passage = GeometricPassages.of(Given.arranged(canal, 22, List.of(Given.hand(25, 0.02))));
        assertThat(passage.steps()).isEmpty();
        assertThat(passage.remarks()).anySatisfy(f -> assertThat(f.where()).isEqualTo("canal.openings"));
    }
}
