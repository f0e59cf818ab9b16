package org.taperwright.shaping.canal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Fault.Weight;
import org.taperwright.shaping.Given;

class CanalGeometryTest {
    private static final Opening ORIFICE = new Opening(0, 1.0, 0.8, 170);
    private static final Opening END = new Opening(16, 0.2, 0.2, 10);

    @Test
    void diametersAreLinearBetweenOpeningsAndTheLongAxisTurnsTheShorterWay() {
        Opening middle = new CanalGeometry(Given.canal(ORIFICE, END)).at(8);
        assertThat(middle.wideMm()).isEqualTo(0.6, within(1e-12));
        assertThat(middle.narrowMm()).isEqualTo(0.5, within(1e-12));
        assertThat(middle.azimuthDeg()).isEqualTo(180, within(1e-9));
    }

    @Test
    void diametersAreConstantBeyondTheFirstAndLastOpening() {
        CanalGeometry geometry = new CanalGeometry(Given.canal(ORIFICE, END));
        assertThat(geometry.wideMm(-1)).isEqualTo(1.0);
        assertThat(geometry.wideMm(17)).isEqualTo(0.2);
    }

    @Test
    void aSoundCanalHasNoFault() {
        assertThat(CanalGeometry.check(Given.canal(ORIFICE, END))).isEmpty();
    }

    @Test
    void depthsOfOpeningsMustRise() {
        assertFault(Given.canal(ORIFICE, END, END), Weight.IMPOSSIBLE, "openings[2].depthMm", "does not go beyond");
    }

    @Test
    void diametersMustBePositiveAndTheGreaterNotLess() {
        assertFault(
                Given.canal(ORIFICE, new Opening(16, 0.2, 0, 0)), Weight.IMPOSSIBLE, "openings[1].narrowMm", "0 mm");
        assertFault(
                Given.canal(ORIFICE, new Opening(16, 0.2, 0.3, 0)), Weight.IMPOSSIBLE, "openings[1].wideMm", "0.2 mm");
        assertFault(
                Given.canal(ORIFICE, new Opening(16, 0.2, Double.NaN, 0)),
                Weight.IMPOSSIBLE,
                "openings[1].narrowMm",
                "lesser diameter");
    }

    @Test
    void theWorkingLengthMustEndWithinTheCanal() {
        assertFault(lengths(6, 22.5), Weight.IMPOSSIBLE, "workingLengthMm", "beyond the canal's end");
        assertFault(lengths(6, 5), Weight.IMPOSSIBLE, "workingLengthMm", "above the orifice");
        assertThat(CanalGeometry.possible(lengths(6, 22.5))).isFalse();
    }

    @Test
    void aCentrelineNeedsAPieceWithALength() {
        assertFault(pieces(), Weight.IMPOSSIBLE, "pieces", "no piece");
        assertFault(pieces(new CanalPiece(0, 0, 0)), Weight.IMPOSSIBLE, "pieces[0].lengthMm", "0 mm");
    }

    /** Extremes of 1163 canals, 75 degrees and 2 mm: Schäfer et al., J Endod 2002;28:211-216, abstract. */
    @Test
    void aBendBeyondWhatWasSeenInManyCanalsIsUnusual() {
        assertFault(
                pieces(new CanalPiece(14, 0, 0), new CanalPiece(2, 80, 0)), Weight.UNUSUAL, "pieces[1].angleDeg", "80");
        assertFault(
                pieces(new CanalPiece(14, 0, 0), new CanalPiece(2, 80, 0)),
                Weight.UNUSUAL,
                "pieces[1].angleDeg",
                "radius");
    }

    @Test
    void openingsThatLeaveTheEndsOpenAreUnusual() {
        assertFault(Given.canal(new Opening(1, 1, 1, 0), END), Weight.UNUSUAL, "openings[0].depthMm", "first opening");
        assertFault(
                Given.canal(ORIFICE, new Opening(15, 0.2, 0.2, 0)),
                Weight.UNUSUAL,
                "openings[1].depthMm",
                "last opening");
    }

    @Test
    void theRootMustHoldTheCanal() {
        Canal canal = Given.canal(ORIFICE, END);
        Canal thin = new Canal(
                canal.name(), canal.pieces(), canal.openings(), List.of(new RootOutline(0, 3, 0.7, 0)), 6, 22, "", "");
        assertFault(thin, Weight.IMPOSSIBLE, "root[0].narrowMm", "no wider than the canal");
    }

    private static Canal lengths(double reference, double workingLength) {
        Canal canal = Given.canal(ORIFICE, END);
        return new Canal("", canal.pieces(), canal.openings(), List.of(), reference, workingLength, "", "");
    }

    private static Canal pieces(CanalPiece... pieces) {
        return new Canal("", List.of(pieces), List.of(ORIFICE, END), List.of(), 6, 22, "", "");
    }

    private static void assertFault(Canal canal, Weight weight, String where, String part) {
        List<Fault> faults = CanalGeometry.check(canal);
        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.weight()).isEqualTo(weight);
            assertThat(fault.where()).isEqualTo(where);
            assertThat(fault.what()).contains(part);
            assertThat(fault.expected()).startsWith("expected ");
        });
    }
}
