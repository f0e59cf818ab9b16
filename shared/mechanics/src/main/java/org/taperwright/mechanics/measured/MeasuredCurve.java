package org.taperwright.mechanics.measured;

import java.util.ArrayList;
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
    private static final int MOST = 200;

    public MeasuredCurve {
        points = List.copyOf(points);
    }

    /**
     * The points that a computed curve has a value for, by rising angle: above zero degrees; of bending up to 45 degrees; of
     * twisting up to the greatest torque, beyond which the instrument is broken. Of more than {@value #MOST} points neighbours
     * are averaged.
     */
    public List<CurvePoint> used() {
        double last = test == BenchCurve.BENDING
                ? BendingTest.ANGLE_DEG
                : points.stream()
                        .max(Comparator.comparingDouble(CurvePoint::momentNmm))
                        .map(CurvePoint::angleDeg)
                        .orElse(0.0);
        List<CurvePoint> used = points.stream()
                .filter(point -> point.angleDeg() > 0 && point.angleDeg() <= last)
                .sorted(Comparator.comparingDouble(CurvePoint::angleDeg))
                .toList();
        return used.size() <= MOST ? used : averaged(used);
    }

    private static List<CurvePoint> averaged(List<CurvePoint> many) {
        int group = (many.size() + MOST - 1) / MOST;
        List<CurvePoint> few = new ArrayList<>();
        for (int from = 0; from < many.size(); from += group) {
            List<CurvePoint> near = many.subList(from, Math.min(many.size(), from + group));
            few.add(new CurvePoint(
                    near.stream().mapToDouble(CurvePoint::angleDeg).average().orElseThrow(),
                    near.stream().mapToDouble(CurvePoint::momentNmm).average().orElseThrow()));
        }
        return few;
    }
}
