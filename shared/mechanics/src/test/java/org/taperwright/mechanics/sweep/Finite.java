package org.taperwright.mechanics.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Looks at every number that records hold, at any depth. */
final class Finite {
    private Finite() {}

    static void check(String where, Object value) {
        if (value instanceof Double number) {
            assertThat(number).as(where).isFinite();
        } else if (value instanceof OptionalDouble number) {
            number.ifPresent(inside -> check(where, inside));
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inside -> check(where, inside));
        } else if (value instanceof Collection<?> collection) {
            int index = 0;
            for (Object inside : collection) {
                check(where + "[" + index++ + "]", inside);
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, inside) -> check(where + "." + key, inside));
        } else if (value instanceof Sampled sampled) {
            check(where, sampled.reading());
        } else if (value instanceof Record composite) {
            for (RecordComponent component : composite.getClass().getRecordComponents()) {
                check(where + "." + component.getName(), read(composite, component));
            }
        }
    }

    private static Object read(Record composite, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(composite);
        } catch (IllegalAccessException | InvocationTargetException failure) {
            throw new AssertionError(component + " cannot be read", failure);
        }
    }
}
