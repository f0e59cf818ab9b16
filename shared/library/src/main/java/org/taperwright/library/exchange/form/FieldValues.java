package org.taperwright.library.exchange.form;

import java.util.Map;
import java.util.NoSuchElementException;

/** The values read for the fields of one record. */
public final class FieldValues {
    private final Map<Field<?, ?>, Object> values;

    FieldValues(Map<Field<?, ?>, Object> values) {
        this.values = values;
    }

    /** The value of a field. */
    @SuppressWarnings("unchecked") // each field's value was put by the same field, see RecordForm
    public <V> V of(Field<?, V> field) {
        Object value = values.get(field);
        if (value == null) {
            throw new NoSuchElementException("the form has no field " + field.name());
        }
        return (V) value;
    }
}
