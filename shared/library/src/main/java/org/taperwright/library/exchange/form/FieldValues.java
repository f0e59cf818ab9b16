package org.taperwright.library.exchange.form;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/** The values read for the fields of one record, each at its field's index: a record has few fields, and many are read. */
public final class FieldValues {
    private final List<? extends Field<?, ?>> fields;
    private final Object[] values;
    private int missing;

    FieldValues(List<? extends Field<?, ?>> fields) {
        this.fields = fields;
        this.values = new Object[fields.size()];
    }

    void put(int index, Optional<?> value) {
        if (value.isPresent()) {
            values[index] = value.get();
        } else {
            missing++;
        }
    }

    boolean complete() {
        return missing == 0;
    }

    /** The value of a field. */
    @SuppressWarnings("unchecked") // each field's value was put by the same field, see RecordForm
    public <V> V of(Field<?, V> field) {
        for (int i = 0; i < values.length; i++) {
            if (fields.get(i) == field) {
                return (V) values[i];
            }
        }
        throw new NoSuchElementException("the form has no field " + field.name());
    }
}
