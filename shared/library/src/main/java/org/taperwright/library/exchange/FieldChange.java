package org.taperwright.library.exchange;

import java.util.Optional;

/**
 * A field in which two versions of a thing differ.
 *
 * @param field its path in the words of the JSON form, such as {@code taper[1].taper}
 * @param before its value in the older version as the form writes it; empty when the field was left out
 * @param after its value in the newer version; empty when it is left out
 */
public record FieldChange(String field, Optional<String> before, Optional<String> after) {
    /** One line for people. */
    public String sentence() {
        return field + ": " + before.orElse("nothing") + " \u2192 " + after.orElse("nothing");
    }
}
