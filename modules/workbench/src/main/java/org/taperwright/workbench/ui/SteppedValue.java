package org.taperwright.workbench.ui;

import javax.swing.AbstractSpinnerModel;
import org.jspecify.annotations.Nullable;

/** A spinner's model that steps without gathering rounding errors. */
final class SteppedValue extends AbstractSpinnerModel {
    private final QuantityKind kind;
    private double number;

    SteppedValue(QuantityKind kind, double number) {
        this.kind = kind;
        this.number = number;
    }

    double number() {
        return number;
    }

    boolean is(double other) {
        return Math.abs(number - other) <= 1e-12;
    }

    @Override
    public Object getValue() {
        return number;
    }

    @Override
    public void setValue(@Nullable Object value) {
        if (value instanceof Number given && !is(given.doubleValue())) {
            number = given.doubleValue();
            fireStateChanged();
        }
    }

    @Override
    public @Nullable Object getNextValue() {
        return moved(1);
    }

    @Override
    public @Nullable Object getPreviousValue() {
        return moved(-1);
    }

    private @Nullable Object moved(int steps) {
        double next = kind.stepped(number, steps);
        return is(next) ? null : next;
    }
}
