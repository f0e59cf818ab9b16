package org.taperwright.comparer.ui;

import java.util.List;
import org.taperwright.mechanics.measured.AlloyFit;
import org.taperwright.mechanics.measured.FittedConstant;
import org.taperwright.mechanics.measured.MeasuredLives;
import org.taperwright.mechanics.measured.Residuals;
import org.taperwright.mechanics.quantity.Shown;

/** All that is known of a fit, in words and numbers. */
final class FitWords {
    private FitWords() {}

    static String of(AlloyFit fit) {
        StringBuilder text = new StringBuilder();
        text.append(fit.alloy().label()).append(": a new alloy; the one it began from stays as it was.\n");
        text.append(fit.alloy().source()).append("\n\n");
        for (FittedConstant constant : fit.constants()) {
            String unit = constant.before().unit().isEmpty()
                    ? ""
                    : " " + constant.before().unit();
            text.append(constant.before().label())
                    .append(": ")
                    .append(Shown.number(constant.value()))
                    .append(constant.atEdge() ? unit : " ± " + Shown.number(constant.standardError()) + unit)
                    .append(" (before: ")
                    .append(Shown.number(constant.before().value()))
                    .append(", ")
                    .append(Shown.band(constant.before().band()))
                    .append(unit)
                    .append(")")
                    .append(
                            constant.atEdge()
                                    ? "; held at the edge of its band: the measurements would have it beyond"
                                    : "")
                    .append("\n");
        }
        text.append("± is one standard error, by the covariance at the solution.\n\n");
        correlations(fit, text);
        for (Residuals residuals : fit.residuals()) {
            text.append(residuals.measured().label())
                    .append(": root mean square of ")
                    .append(residuals.points().size())
                    .append(residuals.measured() instanceof MeasuredLives ? lives(residuals) : curve(residuals))
                    .append(residuals.left())
                    .append(" measured points not used\n");
        }
        fit.curveScatter()
                .ifPresent(scatter -> text.append("Scatter about the fitted curves: ")
                        .append(Shown.percent(scatter))
                        .append(" of each curve's greatest value.\n"));
        fit.lifeScatter()
                .ifPresent(scatter -> text.append("Scatter of lives about the fit: a factor of ")
                        .append(Shown.number(Math.exp(scatter)))
                        .append(" either way (one standard deviation of the logarithm).\n"));
        return text.toString();
    }

    private static String curve(Residuals residuals) {
        return " differences " + Shown.number(residuals.rootMeanSquare()) + " N·mm, "
                + Shown.percent(residuals.relative()) + " of the greatest; ";
    }

    private static String lives(Residuals residuals) {
        return " ratios of measured to computed life a factor of " + Shown.number(Math.exp(residuals.ofLogarithms()))
                + "; ";
    }

    private static void correlations(AlloyFit fit, StringBuilder text) {
        List<FittedConstant> constants = fit.constants();
        for (int i = 0; i < constants.size(); i++) {
            for (int j = i + 1; j < constants.size(); j++) {
                text.append("Correlation of ")
                        .append(constants.get(i).before().label())
                        .append(" and ")
                        .append(constants.get(j).before().label())
                        .append(": ")
                        .append(Shown.number(fit.correlation(i, j), 2, 2))
                        .append('\n');
            }
        }
        if (constants.size() > 1) {
            text.append('\n');
        }
    }
}
