package org.taperwright.shaping.passage.spread;

import java.util.function.DoubleUnaryOperator;

/**
 * A constant that is not known.
 *
 * @param name its name among all constants of the program: the same name has the same draws everywhere
 * @param label what people call it
 * @param unit unit; empty for a plain number
 * @param at the value below which a share of all lie, 0 to 1
 * @param source how its spread is known
 */
public record UncertainInput(String name, String label, String unit, DoubleUnaryOperator at, String source) {
    private static final double EDGE = 0.05;

    /** Value below which 5 % lie. */
    public double low() {
        return at.applyAsDouble(EDGE);
    }

    /** Value below which 95 % lie. */
    public double high() {
        return at.applyAsDouble(1 - EDGE);
    }
}
