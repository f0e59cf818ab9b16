package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.date;
import static org.taperwright.library.exchange.form.Forms.flag;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.whole;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.measured.FitAccount;
import org.taperwright.mechanics.measured.FitAccount.Constant;
import org.taperwright.mechanics.measured.FitAccount.Residual;

/** The form of what is kept of a fit with the alloy it made. */
final class FitAccountForm {
    private static final int MOST_CONSTANTS = 50;
    private static final int MOST_TABLES = 1_000;
    private static final int MOST_POINTS = 1_000_000_000;
    private static final Form<Double> ANY = number(-1e30, 1e30, "");
    private static final Form<Double> SIZE = number(0, 1e30, "");

    private static final Field<Constant, String> NAME =
            required("name", identifier(), "key of the constant", Constant::name);
    private static final Field<Constant, Double> BEFORE = required("before", ANY, "its value before", Constant::before);
    private static final Field<Constant, Double> VALUE = required("value", ANY, "its value after", Constant::value);
    private static final Field<Constant, Double> ERROR =
            required("standardError", SIZE, "its standard error; zero where it was held", Constant::standardError);
    private static final Field<Constant, Boolean> AT_EDGE = standing(
            "atEdge",
            false,
            flag(),
            "whether it was held at an edge of its band: the measurements would have it beyond",
            Constant::atEdge);
    private static final RecordForm<Constant> CONSTANT = new RecordForm<>(
            "fittedConstant",
            "A constant that was fitted.",
            true,
            List.of(NAME, BEFORE, VALUE, ERROR, AT_EDGE),
            values -> new Constant(
                    values.of(NAME), values.of(BEFORE), values.of(VALUE), values.of(ERROR), values.of(AT_EDGE)));

    private static final Field<Residual, String> LABEL =
            required("label", line(), "name of the measurements", Residual::label);
    private static final Field<Residual, Integer> POINTS =
            required("points", whole(0, MOST_POINTS), "how many points were used", Residual::points);
    private static final Field<Residual, Integer> LEFT =
            standing("left", 0, whole(0, MOST_POINTS), "how many were not", Residual::left);
    private static final Field<Residual, Double> SHARE = required(
            "share",
            SIZE,
            "root of the mean square of the differences: of a curve over its greatest value, of lives in natural logarithms",
            Residual::share);
    private static final RecordForm<Residual> RESIDUAL = new RecordForm<>(
            "fitResidual",
            "How well measurements are met after the fit.",
            true,
            List.of(LABEL, POINTS, LEFT, SHARE),
            values -> new Residual(values.of(LABEL), values.of(POINTS), values.of(LEFT), values.of(SHARE)));

    private static final Field<FitAccount, String> DESIGN =
            required("design", line(), "name of the design that was measured", FitAccount::design);
    private static final Field<FitAccount, LocalDate> DAY =
            required("day", date(), "when it was fitted", FitAccount::day);
    private static final Field<FitAccount, List<Constant>> CONSTANTS =
            required("constants", list(CONSTANT, 1, MOST_CONSTANTS), "the constants fitted", FitAccount::constants);
    private static final Field<FitAccount, List<List<Double>>> COVARIANCE = required(
            "covariance",
            list(list(ANY, 1, MOST_CONSTANTS), 1, MOST_CONSTANTS),
            "covariance of the constants, row by row, in their order and units",
            FitAccount::covariance);
    private static final Field<FitAccount, List<Residual>> RESIDUALS = required(
            "residuals",
            list(RESIDUAL, 0, MOST_TABLES),
            "one for each curve and table of lives",
            FitAccount::residuals);
    private static final Field<FitAccount, Optional<Double>> CURVE_SCATTER = optional(
            "curveScatter",
            SIZE,
            "standard deviation of a point about the fitted curve, over the greatest value of its curve",
            account -> account.curveScatter().stream().boxed().findFirst());
    private static final Field<FitAccount, Optional<Double>> LIFE_SCATTER = optional(
            "lifeScatter",
            SIZE,
            "standard deviation of the natural logarithm of a life about the fitted one",
            account -> account.lifeScatter().stream().boxed().findFirst());

    static final RecordForm<FitAccount> FORM = new RecordForm<>(
            "fitAccount",
            "How an alloy's constants were found from measurements.",
            false,
            List.of(DESIGN, DAY, CONSTANTS, COVARIANCE, RESIDUALS, CURVE_SCATTER, LIFE_SCATTER),
            values -> new FitAccount(
                    values.of(DESIGN),
                    values.of(DAY),
                    values.of(CONSTANTS),
                    values.of(COVARIANCE),
                    values.of(RESIDUALS),
                    scatter(values.of(CURVE_SCATTER)),
                    scatter(values.of(LIFE_SCATTER))));

    private FitAccountForm() {}

    private static OptionalDouble scatter(Optional<Double> given) {
        return given.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
