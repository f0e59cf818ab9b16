package org.taperwright.mechanics.measured;

import java.util.Comparator;
import java.util.List;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.CurvePoint;

/**
 * A curve measured on an instrument held as the computed test holds it.
 *
 * @param test which test
 * @param label name for people
 * @param points angle in degrees, moment or torque in N mm
 */
public record MeasuredCurve(BenchCurve test, String label, List<CurvePoint> points) implements Measured {
    public MeasuredCurve {
        points = List.copyOf(points);
    }

    /**
     * The points that a computed curve has a value for, by rising angle: above zero degrees; of bending up to 45 degrees; of
     * twisting up to the greatest torque, beyond which the instrument is broken.
     */
    public List<CurvePoint> used() {
        double last = test == BenchCurve.BENDING
                ? BendingTest.ANGLE_DEG
                : points.stream()
                        .max(Comparator.comparingDouble(CurvePoint::momentNmm))
                        .map(CurvePoint::angleDeg)
                        .orElse(0.0);
        return points.stream()
                .filter(point -> point.angleDeg() > 0 && point.angleDeg() <= last)
                .sorted(Comparator.comparingDouble(CurvePoint::angleDeg))
                .toList();
    }
}
