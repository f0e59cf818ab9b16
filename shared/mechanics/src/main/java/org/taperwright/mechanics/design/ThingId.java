package org.taperwright.mechanics.design;

import java.util.regex.Pattern;

/**
 * The name by which things in a library refer to each other. Letters, digits, dots and hyphens, 1 to 80 characters;
 * it does not change when the thing is renamed.
 */
public record ThingId(String value) implements Comparable<ThingId> {
    private static final Pattern SHAPE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,79}");

    public ThingId {
        if (!SHAPE.matcher(value).matches()) {
            throw new IllegalArgumentException("not an identifier: \"" + value + "\"");
        }
    }

    /** A new identifier that nothing else bears. */
    public static ThingId fresh() {
        return new ThingId(java.util.UUID.randomUUID().toString());
    }

    @Override
    public int compareTo(ThingId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
