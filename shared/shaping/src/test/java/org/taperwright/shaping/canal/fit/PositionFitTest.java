package org.taperwright.shaping.canal.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.BendMeasure;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Vector;

class PositionFitTest {
    @Test
    void exactPointsGiveBackTheirBendInAnyPlane() {
        for (double azimuth : new double[] {0, 77, 200}) {
            BendMeasure found = measure(points(35, 8, azimuth, 0, 1));
            assertThat(found.pruettDeg()).isEqualTo(35, within(0.05));
            assertThat(found.radiusMm()).isEqualTo(8, within(0.008));
            assertThat(found.startMm()).isEqualTo(5, within(0.02));
        }
    }

    /** Noise of 0.02 mm, about a picture element: angle within a degree, and the radius is not lost. */
    @Test
    void noisyPointsKeepAngleAndRadius() {
        for (int seed = 1; seed <= 10; seed++) {
            BendMeasure found = measure(points(40, 8, 0, 0.02, seed));
            assertThat(found.pruettDeg()).isEqualTo(40, within(1.5));
            assertThat(found.radiusMm()).isEqualTo(8, within(1.2));
        }
    }

    @Test
    void pointsOutOfOnePlaneShowInTheDistancesLeft() {
        Centreline line = Centreline.of(List.of(new CanalPiece(6, 40, 0), new CanalPiece(6, 40, 90)));
        List<Vector> points = new ArrayList<>();
        for (double s = 0; s < 12; s += 0.1) {
            points.add(line.at(s).place());
        }
        assertThat(PositionFit.of(points).orElseThrow().flatnessMm()).isGreaterThan(0.05);
    }

    @Test
    void tooFewPointsOrOneTwiceAreFaults() {
        Vector point = new Vector(0, 0, 1);
        assertThat(PositionFit.faults(List.of(point)))
                .anySatisfy(fault -> assertThat(fault.what()).contains("1 points"));
        assertThat(PositionFit.faults(List.of(point, point)))
                .anySatisfy(fault -> assertThat(fault.where()).isEqualTo("points[1]"));
        assertThat(PositionFit.faults(List.of(new Vector(0, 0, Double.NaN))))
                .anySatisfy(fault -> assertThat(fault.what()).contains("not a number"));
    }

    private static BendMeasure measure(List<Vector> points) {
        FittedCentreline fitted = PositionFit.of(points).orElseThrow();
        return BendMeasure.of(fitted.pieces()).orElseThrow();
    }

    private static List<Vector> points(double angle, double radius, double azimuth, double noise, int seed) {
        List<CanalPiece> pieces = new ArrayList<>();
        for (CanalPiece piece : BendMeasure.pieces(13, 5, angle, radius).orElseThrow()) {
            pieces.add(new CanalPiece(piece.lengthMm(), piece.angleDeg(), azimuth));
        }
        Centreline line = Centreline.of(pieces);
        Random random = new Random(seed);
        List<Vector> points = new ArrayList<>();
        for (double s = 0; s <= 13; s += 0.1) {
            Vector error = new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(noise);
            points.add(line.at(s).place().plus(1, error));
        }
        return points;
    }
}
