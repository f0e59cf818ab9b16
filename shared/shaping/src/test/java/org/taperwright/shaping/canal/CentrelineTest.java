package org.taperwright.shaping.canal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CentrelineTest {
    private static final double QUARTER_OF_RADIUS_5 = 5 * Math.PI / 2;

    /** Closed form: a quarter of a circle of radius R leads to (R, R) and turns by a right angle. */
    @Test
    void aQuarterCircleEndsWhereACircleSays() {
        Frame end = Centreline.of(List.of(new CanalPiece(QUARTER_OF_RADIUS_5, 90, 0)))
                .at(QUARTER_OF_RADIUS_5);
        assertVector(end.place(), 5, 0, 5);
        assertVector(end.tangent(), 1, 0, 0);
        assertVector(end.first(), 0, 0, -1);
        assertVector(end.second(), 0, 1, 0);
    }

    /** Two quarter circles in planes square to one another: the second bends about the direction that the first kept. */
    @Test
    void aBendToTheSideLeavesThePlane() {
        Centreline line = Centreline.of(
                List.of(new CanalPiece(QUARTER_OF_RADIUS_5, 90, 0), new CanalPiece(QUARTER_OF_RADIUS_5, 90, 90)));
        assertVector(line.at(2 * QUARTER_OF_RADIUS_5).place(), 10, 5, 5);
        assertVector(line.at(2 * QUARTER_OF_RADIUS_5).tangent(), 0, 1, 0);
    }

    @Test
    void beforeTheOrificeAndBeyondTheEndItIsStraight() {
        Centreline line = Centreline.of(List.of(new CanalPiece(QUARTER_OF_RADIUS_5, 90, 0)));
        assertVector(line.at(-2).place(), 0, 0, -2);
        assertVector(line.at(QUARTER_OF_RADIUS_5 + 2).place(), 7, 0, 5);
        assertThat(line.firstAt(-1)).isZero();
        assertThat(line.firstAt(9)).isZero();
        assertThat(line.firstAt(1)).isEqualTo(0.2, within(1e-12));
        assertThat(line.integralFirstTo(20)).isEqualTo(Math.PI / 2, within(1e-12));
    }

    @Property(tries = 200)
    void theFrameStaysSquareAndTheCurveAsLongAsItsPieces(
            @ForAll @DoubleRange(min = 0.5, max = 6) double length,
            @ForAll @DoubleRange(min = -90, max = 90) double angle,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        Centreline line = Centreline.of(List.of(new CanalPiece(3, 20, 30), new CanalPiece(length, angle, azimuth)));
        Frame end = line.at(line.lengthMm());
        assertThat(end.tangent().cross(end.first()).minus(end.second()).length())
                .isLessThan(1e-12);
        double walked = 0;
        int steps = 1000;
        for (int i = 1; i <= steps; i++) {
            Vector from = line.at(line.lengthMm() * (i - 1) / steps).place();
            walked += line.at(line.lengthMm() * i / steps).place().minus(from).length();
        }
        assertThat(walked).isEqualTo(line.lengthMm(), within(1e-5 * line.lengthMm()));
    }

    private static void assertVector(Vector vector, double x, double y, double z) {
        assertThat(vector.minus(new Vector(x, y, z)).length()).isLessThan(1e-12);
    }
}
