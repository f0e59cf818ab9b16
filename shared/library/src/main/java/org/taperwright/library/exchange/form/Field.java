package org.taperwright.library.exchange.form;

import java.util.Optional;
import java.util.function.Function;

/**
 * A field of a record's form.
 *
 * @param name its name in JSON
 * @param form how its value stands there
 * @param explanation one clause for the published schema
 * @param getter takes the value from the record
 * @param absent the value when the field is left out; empty when it must be there
 * @param <R> the record
 * @param <V> the value
 */
public record Field<R, V>(String name, Form<V> form, String explanation, Function<R, V> getter, Optional<V> absent) {

    /** A field that must be there. */
    public static <R, V> Field<R, V> required(String name, Form<V> form, String explanation, Function<R, V> getter) {
        return new Field<>(name, form, explanation, getter, Optional.empty());
    }

    /** A field that may be left out and then has a value of its own; a value equal to it is not written. */
    public static <R, V> Field<R, V> standing(
            String name, V absent, Form<V> form, String explanation, Function<R, V> getter) {
        return new Field<>(name, form, explanation, getter, Optional.of(absent));
    }

    /** A field for a value that may be absent. */
    public static <R, V> Field<R, Optional<V>> optional(
            String name, Form<V> form, String explanation, Function<R, Optional<V>> getter) {
        return new Field<>(name, new PresentForm<>(form), explanation, getter, Optional.of(Optional.empty()));
    }
}
