package org.taperwright.library.store;

import java.util.Arrays;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

/** Kinds of thing a library keeps, in the order shown. */
public enum ThingKind {
    DESIGN("design", "Designs", Design.class),
    INSTRUMENT("instrument", "Instruments", Instrument.class),
    MOTOR("motor", "Motors", Motor.class),
    CANAL("canal", "Canals", Canal.class),
    SEQUENCE("sequence", "Sequences", Sequence.class),
    KIT("kit", "Kits", Kit.class),
    COMPARISON("comparison", "Comparisons", SavedComparison.class),
    FILTER("filter", "Filters", SavedFilter.class),
    ALLOY("alloy", "Alloys", OwnAlloy.class);

    private final String word;
    private final String heading;
    private final Class<? extends Record> type;

    ThingKind(String word, String heading, Class<? extends Record> type) {
        this.word = word;
        this.heading = heading;
        this.type = type;
    }

    /** The word in the JSON form. */
    public String word() {
        return word;
    }

    /** The word with its article, such as "an instrument". */
    public String one() {
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    /** The heading over things of this kind. */
    public String heading() {
        return heading;
    }

    /** The record that holds such a thing. */
    public Class<? extends Record> type() {
        return type;
    }

    /** The kind of a word. */
    public static Optional<ThingKind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** The kind of a thing. */
    public static ThingKind of(Record thing) {
        for (ThingKind kind : values()) {
            if (kind.type.isInstance(thing)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("not a thing of the library: " + thing.getClass());
    }
}
