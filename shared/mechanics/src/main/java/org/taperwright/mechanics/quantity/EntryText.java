package org.taperwright.mechanics.quantity;

import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.taperwright.mechanics.work.Fault;

/** The words and pattern of {@link Entry}. */
final class EntryText {
    static final Pattern NUMBER = Pattern.compile("([+\\-−]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)(.*)");

    private EntryText() {}

    static Entry faulty(String where, String what, Unit asked) {
        return new Entry.Faulty(Fault.impossible(where, what, expected(asked)));
    }

    private static String expected(Unit asked) {
        String units = Arrays.stream(Unit.values())
                .filter(unit -> unit.kind() == asked.kind() && !unit.symbol().isEmpty())
                .map(Unit::symbol)
                .collect(Collectors.joining(" or "));
        return units.isEmpty() ? "a number" : "a number, with or without " + units;
    }
}
