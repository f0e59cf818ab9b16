package org.taperwright.shaping.instrument;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;

/**
 * Entries of the catalogue that are probably one: all of one size, taper, length and drive.
 *
 * @param kind in what they are alike
 * @param entries at least two, in the order of their identifiers
 */
public record Likeness(Kind kind, List<ThingId> entries) {
    public Likeness {
        entries = List.copyOf(entries);
    }

    /** In what entries are alike. */
    public enum Kind {
        /** Name, type, maker, line and lot are the same: duplicates. */
        SAME("the same in name, type, maker, line and lot"),
        /** They are the same once case, spaces and the spelling of numbers are set aside. */
        SPELLING("differ only in spelling"),
        NAME("differ only in name"),
        TYPE("differ only in type"),
        MAKER("differ only in maker"),
        LINE("differ only in line"),
        LOT("differ only in lot");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** What is said of them. */
        public String words() {
            return words;
        }
    }
}
