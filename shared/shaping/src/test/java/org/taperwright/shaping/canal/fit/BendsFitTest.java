package org.taperwright.shaping.canal.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Vector;

/** Canals whose pieces are known are found back from points along them, turned and moved anyhow. */
class BendsFitTest {
    private static final List<CanalPiece> STRAIGHT = List.of(new CanalPiece(12, 0, 0));
    private static final List<CanalPiece> ONE =
            List.of(new CanalPiece(6, 0, 0), new CanalPiece(4, 30, 0), new CanalPiece(3, 0, 0));
    private static final List<CanalPiece> S_SHAPED = List.of(
            new CanalPiece(5, 0, 0),
            new CanalPiece(4, 40, 0),
            new CanalPiece(1, 0, 0),
            new CanalPiece(3, 35, 180),
            new CanalPiece(1, 0, 0));
    private static final List<CanalPiece> OUT_OF_PLANE = List.of(
            new CanalPiece(4, 0, 0),
            new CanalPiece(4, 35, 0),
            new CanalPiece(1.5, 0, 0),
            new CanalPiece(3, 30, 90),
            new CanalPiece(1.5, 0, 0));
    private static final List<CanalPiece> LATE_BEND = List.of(
            new CanalPiece(5, 0, 0),
            new CanalPiece(4, 40, 0),
            new CanalPiece(1, 0, 0),
            new CanalPiece(2.5, 25, 180),
            new CanalPiece(0.5, 0, 0));

    @Test
    void piecesAreFoundBackExactlyFromExactPoints() {
        for (List<CanalPiece> pieces : List.of(STRAIGHT, ONE, S_SHAPED, OUT_OF_PLANE)) {
            FittedBends found = BendsFit.of(points(pieces, 0)).orElseThrow();
            assertThat(found.rmsMm()).isLessThan(1e-6);
            assertThat(found.pieces()).hasSameSizeAs(pieces);
            for (int i = 0; i < pieces.size(); i++) {
                CanalPiece there = found.pieces().get(i);
                CanalPiece given = pieces.get(i);
                assertThat(there.lengthMm()).isEqualTo(given.lengthMm(), within(1e-4));
                assertThat(there.angleDeg()).isEqualTo(given.angleDeg(), within(1e-3));
                assertThat(Math.abs(Math.IEEEremainder(Math.abs(there.azimuthDeg()) - given.azimuthDeg(), 360)))
                        .isLessThan(1e-3);
            }
        }
    }

    /** Noise of 0.02 mm is that of a fine radiograph's pixels; what is asked is that of the one-bend fit in the method, and twice it. */
    @Test
    void noiseChangesNeitherTheNumberOfBendsNorTheirAnglesMuch() {
        for (List<CanalPiece> pieces : List.of(STRAIGHT, ONE, S_SHAPED, OUT_OF_PLANE, LATE_BEND)) {
            FittedBends found = BendsFit.of(points(pieces, 0.02)).orElseThrow();
            assertThat(found.rmsMm()).isBetween(0.015, 0.035);
            List<Double> angles = angles(found.pieces());
            List<Double> given = angles(pieces);
            assertThat(angles).as("bends of %s", pieces).hasSameSizeAs(given);
            for (int i = 0; i < given.size(); i++) {
                // of a bend that ends where the points do little is seen
                double allowed = pieces == LATE_BEND ? 6 : 4;
                assertThat(angles.get(i)).isEqualTo(given.get(i), within(allowed));
            }
        }
    }

    @Test
    void depthsAreWaysAlongThePieces() {
        FittedBends found = BendsFit.of(points(S_SHAPED, 0)).orElseThrow();
        for (int i = 0; i < found.depthsMm().size(); i++) {
            assertThat(found.depthsMm().get(i)).isEqualTo(14.0 * i / 35, within(1e-5));
        }
    }

    private static List<Double> angles(List<CanalPiece> pieces) {
        return pieces.stream()
                .map(CanalPiece::angleDeg)
                .filter(angle -> angle != 0)
                .toList();
    }

    /** A point each 0.4 mm or so, turned about two axes and moved, so that nothing is where the canal's frame has it. */
    private static List<Vector> points(List<CanalPiece> pieces, double noiseMm) {
        Random random = new Random(5);
        Centreline line = Centreline.of(pieces);
        List<Vector> points = new ArrayList<>();
        int spaces = (int) Math.round(line.lengthMm() / 0.4);
        for (int i = 0; i <= spaces; i++) {
            Vector at = line.at(line.lengthMm() * i / spaces).place();
            double x = at.x() * Math.cos(0.7) - at.z() * Math.sin(0.7);
            double z = at.x() * Math.sin(0.7) + at.z() * Math.cos(0.7);
            double y = at.y() * Math.cos(1.1) - z * Math.sin(1.1);
            z = at.y() * Math.sin(1.1) + z * Math.cos(1.1);
            points.add(new Vector(
                    x + 11 + noiseMm * random.nextGaussian(),
                    y - 3 + noiseMm * random.nextGaussian(),
                    z + noiseMm * random.nextGaussian()));
        }
        return points;
    }
}
