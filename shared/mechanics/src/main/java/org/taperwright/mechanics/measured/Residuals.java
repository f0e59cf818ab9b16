package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.FatigueResult;
import org.taperwright.mechanics.properties.BladeSections;

/**
 * Measurements beside what is computed of a design in an alloy.
 *
 * @param measured what was measured
 * @param points one for each point that the computed test has a value for; of very many, averages of neighbours
 * @param left how many fewer those are than the points measured
 */
public record Residuals(Measured measured, List<ResidualPoint> points, int left) {
    public Residuals {
        points = List.copyOf(points);
    }

    /**
     * The residuals of a design that {@link BladeSections#faults} finds nothing impossible in.
     *
     * @throws org.taperwright.mechanics.bench.Unsolved when the bending test has no solution
     */
    public static Residuals of(Measured measured, Design design, Alloy alloy) {
        if (measured instanceof MeasuredCurve curve) {
            return of(curve, ComputedCurve.of(curve.test(), design, alloy, BladeSections.of(design)));
        }
        MeasuredLives lives = (MeasuredLives) measured;
        List<ResidualPoint> points = new ArrayList<>();
        for (MeasuredLives.Life life : lives.lives()) {
            FatigueResult computed = Fatigue.in(life.tube(), design, alloy, Fatigue.USUAL_RPM);
            points.add(new ResidualPoint(computed.strain(), life.cycles(), computed.cycles()));
        }
        return new Residuals(measured, points, 0);
    }

    static Residuals of(MeasuredCurve curve, ComputedCurve computed) {
        List<CurvePoint> used = curve.used();
        double[] values =
                computed.at(used.stream().mapToDouble(CurvePoint::angleDeg).toArray());
        List<ResidualPoint> points = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            points.add(new ResidualPoint(used.get(i).angleDeg(), used.get(i).momentNmm(), values[i]));
        }
        return new Residuals(curve, points, curve.points().size() - used.size());
    }

    /** Root of the mean square of the differences, in the unit measured; zero without points. */
    public double rootMeanSquare() {
        return Math.sqrt(points.stream()
                .mapToDouble(point -> point.difference() * point.difference())
                .average()
                .orElse(0));
    }

    /** Root of the mean square of the natural logarithms of measured over computed, for lives; zero without points. */
    public double ofLogarithms() {
        return Math.sqrt(points.stream()
                .mapToDouble(point -> Math.log(point.measured() / point.computed()))
                .map(difference -> difference * difference)
                .average()
                .orElse(0));
    }

    /** The same as {@link #rootMeanSquare} over the greatest value measured. */
    public double relative() {
        double greatest =
                points.stream().mapToDouble(ResidualPoint::measured).max().orElse(0);
        return greatest > 0 ? rootMeanSquare() / greatest : 0;
    }
}
