package org.taperwright.mechanics.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/**
 * Fits chosen constants of an alloy, each within its band, to what was measured of one design. Of bending and twisting curves each
 * point counts by its difference over the greatest value of its curve, so that curves of any size count alike; scatter of the
 * same size throughout a curve is assumed. Lives count by their logarithms ({@link LifeModel}) and hang on other constants than the
 * curves, so the two are fitted apart.
 */
public final class AlloyFits {
    private AlloyFits() {}

    /**
     * Fits.
     *
     * @param design a design that {@link org.taperwright.mechanics.properties.BladeSections#faults} finds nothing in
     * @param alloy where to begin
     * @param chosen names of the constants to fit, see {@link FitConstants}
     * @param measured curves and lives
     */
    public static FitResult of(
            Design design, Alloy alloy, List<String> chosen, List<? extends Measured> measured, Progress progress) {
        List<AlloyConstant> ofCurves = FitConstants.ofCurves(alloy);
        List<AlloyConstant> ofLife = FitConstants.ofLife(alloy);
        List<AlloyConstant> known =
                Stream.concat(ofCurves.stream(), ofLife.stream()).toList();
        List<Fault> faults = new ArrayList<>();
        for (String name : chosen) {
            if (known.stream().noneMatch(named(name))) {
                faults.add(unknown(name, known));
            }
        }
        if (chosen.isEmpty()) {
            faults.add(Fault.impossible("constants", "none is chosen", "at least one constant to fit"));
        }
        CurveModel curves =
                new CurveModel(design, alloy, chosen(chosen, ofCurves), some(measured, MeasuredCurve.class), progress);
        LifeModel lives =
                new LifeModel(design, alloy, chosen(chosen, ofLife), some(measured, MeasuredLives.class), progress);
        few(
                curves.constants().size(),
                curves.points(),
                "of bending those from 0 to 45 degrees, of twisting those up to the greatest torque",
                faults);
        few(lives.constants().size(), lives.points(), "lives that ended in fracture, well above the endurance", faults);
        if (!faults.isEmpty()) {
            return new FitResult.Refused(faults);
        }
        try {
            return new FitResult.Fitted(fitted(alloy, curves, lives));
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

    private static List<AlloyConstant> chosen(List<String> names, List<AlloyConstant> from) {
        return names.stream()
                .flatMap(name -> from.stream().filter(named(name)))
                .distinct()
                .toList();
    }

    private static Predicate<AlloyConstant> named(String name) {
        return constant -> constant.name().equals(name);
    }

    private static <T extends Measured> List<T> some(List<? extends Measured> measured, Class<T> type) {
        return measured.stream().filter(type::isInstance).map(type::cast).toList();
    }

    private static void few(int constants, int points, String which, List<Fault> faults) {
        if (constants > 0 && points <= constants) {
            faults.add(Fault.impossible(
                    "points",
                    points + " can be used",
                    "more than the " + constants + " constants to fit that hang on them; " + which));
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

    private static AlloyFit fitted(Alloy alloy, CurveModel curves, LifeModel lives) {
        List<FittedConstant> fitted = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        List<Residuals> residuals = new ArrayList<>();
        OptionalDouble curveScatter = OptionalDouble.empty();
        OptionalDouble lifeScatter = OptionalDouble.empty();
        if (!curves.constants().isEmpty()) {
            BoundedFit.Found found = BoundedFit.of(curves, curves.constants());
            add(found, curves.constants(), fitted, rows);
            residuals.addAll(curves.residuals(found.values()));
            curveScatter = OptionalDouble.of(found.scatter());
        }
        if (!lives.constants().isEmpty()) {
            BoundedFit.Found found = BoundedFit.of(lives, lives.constants());
            add(found, lives.constants(), fitted, rows);
            residuals.addAll(lives.residuals(found.values()));
            lifeScatter = OptionalDouble.of(found.scatter());
        }
        Alloy made = alloy;
        for (FittedConstant each : fitted) {
            made = FitConstants.set(made, each.before(), each.value(), each.band());
        }
        String labels = residuals.stream().map(each -> each.measured().label()).collect(Collectors.joining(", "));
        return new AlloyFit(
                renamed(made, fitted, labels),
                fitted,
                square(rows),
                residuals,
                curveScatter,
                lifeScatter,
                curves.evaluations() + lives.evaluations());
    }

    private static void add(
            BoundedFit.Found found, List<AlloyConstant> constants, List<FittedConstant> fitted, List<double[]> rows) {
        for (int k = 0; k < constants.size(); k++) {
            double error = Math.sqrt(found.covariance()[k][k]);
            fitted.add(new FittedConstant(constants.get(k), found.values()[k], error, found.atEdge()[k]));
            rows.add(found.covariance()[k]);
        }
    }

    /** The rows of one or two covariances as one matrix, zero between them. */
    private static List<List<Double>> square(List<double[]> rows) {
        int size = rows.size();
        int first = size == 0 ? 0 : rows.get(0).length;
        List<List<Double>> covariance = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int from = i < first ? 0 : first;
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < size; j++) {
                boolean within = j >= from && j - from < rows.get(i).length;
                row.add(within ? rows.get(i)[j - from] : 0.0);
            }
            covariance.add(row);
        }
        return covariance;
    }

    /** The fitted alloy says what it is: never mistaken for the one it began from. */
    private static Alloy renamed(Alloy made, List<FittedConstant> fitted, String labels) {
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
                names + ": fitted to " + labels + ". The rest: " + made.source(),
                made.validity(),
                made.kin(),
                made.life());
    }
}
