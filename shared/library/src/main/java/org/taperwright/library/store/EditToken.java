package org.taperwright.library.store;

import java.util.UUID;

/** What tells one edit from every other, on its way to the store and there; chosen by the program that makes the edit. */
public record EditToken(String value) {
    /** A new one. */
    public static EditToken fresh() {
        return new EditToken(UUID.randomUUID().toString());
    }
}
