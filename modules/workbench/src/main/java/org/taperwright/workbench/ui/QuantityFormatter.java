package org.taperwright.workbench.ui;

import java.text.ParseException;
import java.util.OptionalDouble;
import javax.swing.JFormattedTextField;
import org.jspecify.annotations.Nullable;

/** Number and unit as text, both ways, for a formatted text field. */
final class QuantityFormatter extends JFormattedTextField.AbstractFormatter {
    private final transient QuantityKind kind;

    QuantityFormatter(QuantityKind kind) {
        this.kind = kind;
    }

    @Override
    public Object stringToValue(@Nullable String text) throws ParseException {
        OptionalDouble value = kind.value(text == null ? "" : text);
        if (value.isEmpty() || !kind.allows(value.getAsDouble())) {
            throw new ParseException("expected " + kind.expectation(), 0);
        }
        return value.getAsDouble();
    }

    @Override
    public String valueToString(@Nullable Object value) {
        return value instanceof Number number ? kind.write(number.doubleValue()) : "";
    }
}
