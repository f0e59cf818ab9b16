package org.taperwright.library.exchange.form;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;

/** The values read for the fields of one record, each at its field's index: a record has few fields, and many are read. */
public final class FieldValues {
    private final List<? extends Field<?, ?>> fields;
    private final Object[] values;
    private int missing;
    /** Fields are mostly read and asked for in their order, so the next one is tried first. */
    private int likely;

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

    /** Reads the field at which a text stands; whether it is one of these, good, and not read before. */
    boolean take(JsonTokens in) {
        String name = in.name();
        for (int i = 0; i < values.length; i++) {
            int index = (likely + i) % values.length;
            if (fields.get(index).name().equals(name)) {
                likely = index + 1;
                Optional<?> value =
                        values[index] == null ? fields.get(index).form().straight(in) : Optional.empty();
                put(index, value);
                return value.isPresent();
            }
        }
        return false;
    }

    /** Gives the fields that were not read the values they then have; whether each has one. */
    boolean completeWithAbsent() {
        for (int i = 0; i < values.length; i++) {
            if (values[i] == null) {
                put(i, fields.get(i).absent());
            }
        }
        likely = 0;
        return complete();
    }

    /** The value of a field. */
    @SuppressWarnings("unchecked") // each field's value was put by the same field, see RecordForm
    public <V> V of(Field<?, V> field) {
        for (int i = 0; i < values.length; i++) {
            int index = (likely + i) % values.length;
            if (fields.get(index) == field) {
                likely = index + 1;
                return (V) values[index];
            }
        }
        throw new NoSuchElementException("the form has no field " + field.name());
    }
}
