package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.work.Progress;

/** Measured curves and the computed ones as a function of an alloy's constants, both over each curve's greatest value. */
final class CurveModel implements FitModel {
    private final Design design;
    private final BladeSections sections;
    private final Alloy alloy;
    private final List<AlloyConstant> constants;
    private final List<MeasuredCurve> curves;
    private final Progress progress;
    private int evaluations;

    CurveModel(
            Design design, Alloy alloy, List<AlloyConstant> constants, List<MeasuredCurve> curves, Progress progress) {
        this.design = design;
        this.sections = BladeSections.of(design);
        this.alloy = alloy;
        this.constants = constants;
        this.curves = curves.stream().filter(curve -> !curve.used().isEmpty()).toList();
        this.progress = progress;
    }

    /** The residuals at values of the constants. */
    List<Residuals> residuals(double[] values) {
        progress.check();
        progress.at(Math.min(0.95, evaluations / (10.0 + evaluations)), "fit, " + evaluations + " evaluations");
        evaluations++;
        Alloy changed = alloy;
        for (int k = 0; k < values.length; k++) {
            changed = FitConstants.set(
                    changed, constants.get(k), values[k], constants.get(k).band());
        }
        List<Residuals> all = new ArrayList<>();
        for (MeasuredCurve curve : curves) {
            all.add(Residuals.of(curve, ComputedCurve.of(curve.test(), design, changed, sections)));
        }
        return all;
    }

    /** The computed values, each over its curve's greatest measured one. */
    @Override
    public double[] computed(double[] values) {
        return scaled(residuals(values), ResidualPoint::computed);
    }

    @Override
    public double[] measured() {
        return curves.stream()
                .flatMapToDouble(curve -> {
                    double greatest = curve.used().stream()
                            .mapToDouble(CurvePoint::momentNmm)
                            .max()
                            .orElse(1);
                    return curve.used().stream().mapToDouble(point -> point.momentNmm() / greatest);
                })
                .toArray();
    }

    private static double[] scaled(List<Residuals> all, ToDoubleFunction<ResidualPoint> value) {
        return all.stream()
                .flatMapToDouble(each -> {
                    double greatest = each.points().stream()
                            .mapToDouble(ResidualPoint::measured)
                            .max()
                            .orElse(1);
                    return each.points().stream().mapToDouble(point -> value.applyAsDouble(point) / greatest);
                })
                .toArray();
    }

    /** How many points are used. */
    int points() {
        return curves.stream().mapToInt(curve -> curve.used().size()).sum();
    }

    List<AlloyConstant> constants() {
        return constants;
    }

    int evaluations() {
        return evaluations;
    }
}
