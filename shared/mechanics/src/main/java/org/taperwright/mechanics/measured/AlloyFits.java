package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * Fits chosen constants of an alloy, each within its band, to measured bending and twisting curves of one design. Each point
 * counts by its difference over the greatest value of its curve, so that curves of any size count alike; scatter of the same
 * size throughout a curve is assumed. Cycles to fracture hang on other constants and are not fitted.
 */
public final class AlloyFits {
    private AlloyFits() {}

    /**
     * Fits.
     *
     * @param design a design that {@link org.taperwright.mechanics.properties.BladeSections#faults} finds nothing in
     * @param alloy where to begin
     * @param chosen names of the constants to fit, see {@link AlloyConstant}
     * @param curves what was measured
     */
    public static FitResult of(
            Design design, Alloy alloy, List<String> chosen, List<MeasuredCurve> curves, Progress progress) {
        List<AlloyConstant> constants = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        List<AlloyConstant> known = AlloyConstant.uncertain(alloy);
        for (String name : chosen) {
            known.stream()
                    .filter(constant -> constant.name().equals(name))
                    .findFirst()
                    .ifPresentOrElse(constants::add, () -> faults.add(unknown(name, known)));
        }
        int points = curves.stream().mapToInt(curve -> curve.used().size()).sum();
        if (chosen.isEmpty()) {
            faults.add(Fault.impossible("constants", "none is chosen", "at least one constant to fit"));
        }
        if (points <= chosen.size()) {
            faults.add(Fault.impossible(
                    "points",
                    points + " can be used",
                    "more than the " + chosen.size() + " constants to fit; of bending those from 0 to 45 degrees, of "
                            + "twisting those up to the greatest torque"));
        }
        if (!faults.isEmpty()) {
            return new FitResult.Refused(faults);
        }
        try {
            CurveModel model = new CurveModel(design, alloy, constants, curves, progress);
            return new FitResult.Fitted(fitted(model, alloy, constants));
        } catch (Unsolved unsolved) {
            return refused("curves", unsolved.getMessage(), "a design that can be bent to the measured angles");
        } catch (TooManyEvaluationsException | TooManyIterationsException endless) {
            return refused("constants", "the fit does not settle", "fewer constants, or more measurements");
        } catch (SingularMatrixException singular) {
            return refused(
                    "constants",
                    "the measurements do not tell the chosen constants apart",
                    "fewer constants, or points where each of them matters");
        }
    }

    private static FitResult refused(String where, String what, String expected) {
        return new FitResult.Refused(List.of(Fault.impossible(where, what, expected)));
    }

    private static Fault unknown(String name, List<AlloyConstant> known) {
        return Fault.impossible(
                "constants",
                "\"" + name + "\" is no constant of the alloy that has a band",
                "one of " + known.stream().map(AlloyConstant::name).collect(Collectors.joining(", ")));
    }

    private static AlloyFit fitted(CurveModel model, Alloy alloy, List<AlloyConstant> constants) {
        BoundedFit.Found found = BoundedFit.of(model, constants);
        List<FittedConstant> fitted = new ArrayList<>();
        Alloy made = alloy;
        for (int k = 0; k < constants.size(); k++) {
            double error = Math.sqrt(found.covariance()[k][k]);
            FittedConstant each = new FittedConstant(constants.get(k), found.values()[k], error, found.atEdge()[k]);
            fitted.add(each);
            Band band = each.band();
            made = constants.get(k).in(made, each.value(), band);
        }
        List<List<Double>> covariance = new ArrayList<>();
        for (double[] row : found.covariance()) {
            covariance.add(java.util.Arrays.stream(row).boxed().toList());
        }
        return new AlloyFit(
                renamed(made, fitted, model.labels()),
                fitted,
                covariance,
                model.residuals(found.values()),
                found.scatter(),
                model.evaluations());
    }

    /** The fitted alloy says what it is: never mistaken for the one it began from. */
    private static Alloy renamed(Alloy made, List<FittedConstant> fitted, String curves) {
        String names = fitted.stream().map(each -> each.before().label()).collect(Collectors.joining(", "));
        return new Alloy(
                made.id() + "-fitted",
                made.label() + ", fitted",
                made.youngMpa(),
                made.youngBand(),
                made.poisson(),
                made.yieldMpa(),
                made.yieldBand(),
                made.ultimateMpa(),
                made.law(),
                made.constants(),
                made.superelastic(),
                names + ": fitted to " + curves + ". The rest: " + made.source(),
                made.validity());
    }
}
