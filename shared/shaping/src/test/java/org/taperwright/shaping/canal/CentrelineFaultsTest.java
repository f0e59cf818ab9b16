package org.taperwright.shaping.canal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;

class CentrelineFaultsTest {
    @Test
    void aBendTighterThanHalfItsOpeningIsImpossibleAndSaysWhere() {
        Fault fault = only(canal(0.4, new CanalPiece(6, 0, 0), new CanalPiece(0.25, 80, 0)));
        assertThat(fault.weight()).isEqualTo(Fault.Weight.IMPOSSIBLE);
        assertThat(fault.where()).isEqualTo("pieces[1].angleDeg");
        assertThat(fault.what()).contains("6 mm below the orifice");
    }

    @Test
    void aCanalThatFoldsBackIsImpossible() {
        Fault fault = only(canal(0.2, new CanalPiece(3, 0, 0), new CanalPiece(8, 75, 0), new CanalPiece(8, 76, 0)));
        assertThat(fault.what()).contains("folds back");
        assertThat(fault.where()).isEqualTo("pieces");
    }

    /** Bent to lie square to its beginning, then round in a circle: it never turns back from the orifice, but meets itself. */
    @Test
    void aCanalThatRunsIntoItselfIsImpossible() {
        Fault fault = only(canal(0.2, new CanalPiece(3, 0, 0), new CanalPiece(2, 90, 0), new CanalPiece(12, 350, 90)));
        assertThat(fault.weight()).isEqualTo(Fault.Weight.IMPOSSIBLE);
        assertThat(fault.what()).contains("runs into itself");
    }

    @Test
    void aCanalThatWidensTowardsItsEndIsUnusual() {
        Canal widening = new Canal(
                "",
                List.of(new CanalPiece(10, 0, 0)),
                List.of(new Opening(0, 0.4, 0.4, 0), new Opening(10, 0.5, 0.5, 0)),
                List.of(),
                0,
                10,
                "",
                "");
        Fault fault = only(widening);
        assertThat(fault.weight()).isEqualTo(Fault.Weight.UNUSUAL);
        assertThat(fault.where()).isEqualTo("openings[1].narrowMm");
        assertThat(fault.what()).contains("10 mm");
    }

    private static Fault only(Canal canal) {
        List<Fault> faults = CanalGeometry.check(canal).stream()
                .filter(fault -> !fault.what().startsWith("the piece turns"))
                .filter(fault -> !fault.expected().contains("rarely"))
                .toList();
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static Canal canal(double half, CanalPiece... pieces) {
        double length =
                List.of(pieces).stream().mapToDouble(CanalPiece::lengthMm).sum();
        return new Canal(
                "",
                List.of(pieces),
                List.of(new Opening(0, 2 * half, 2 * half, 0), new Opening(length, half, half, 0)),
                List.of(),
                0,
                length,
                "",
                "");
    }
}
