package org.taperwright.workbench.ui;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for reading off a plot: three significant digits. */
final class Figures {
    private static final MathContext THREE = new MathContext(3);

    private Figures() {}

    static String three(double value) {
        if (!Double.isFinite(value)) {
            return "\u2013";
        }
        BigDecimal rounded = new BigDecimal(value).round(THREE);
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }
}
