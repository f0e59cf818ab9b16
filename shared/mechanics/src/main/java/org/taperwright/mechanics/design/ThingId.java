package org.taperwright.mechanics.design;

/**
 * The name by which things in a library refer to each other. Letters, digits, dots and hyphens, 1 to 80 characters;
 * it does not change when the thing is renamed.
 */
public record ThingId(String value) implements Comparable<ThingId> {
    private static final int LONGEST = 80;

    public ThingId {
        if (!fits(value)) {
            throw new IllegalArgumentException("not an identifier: \"" + value + "\"");
        }
    }

    /** Whether a text could be an identifier; looked at sign by sign, for a large library has many. */
    public static boolean fits(String value) {
        for (int i = 0; i < value.length(); i++) {
            char sign = value.charAt(i);
            boolean letter = sign >= 'a' && sign <= 'z' || sign >= 'A' && sign <= 'Z' || sign >= '0' && sign <= '9';
            if (!letter && (i == 0 || sign != '.' && sign != '-')) {
                return false;
            }
        }
        return !value.isEmpty() && value.length() <= LONGEST;
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
