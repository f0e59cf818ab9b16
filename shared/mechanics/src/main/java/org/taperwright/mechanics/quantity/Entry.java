package org.taperwright.mechanics.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import org.taperwright.mechanics.work.Fault;

/** What a person typed into a field: the number meant, or what is wrong with the text. */
public sealed interface Entry {
    /** A number, in the unit that was asked for. */
    record Given(double value) implements Entry {}

    /** No number; why, and what was expected. */
    record Faulty(Fault fault) implements Entry {}

    /**
     * Reads a number with or without a unit. A bare number is in the unit asked for; another unit of the same kind is
     * turned into it. A comma counts as decimal sign.
     *
     * @param text such as {@code 0.25 mm}, {@code 2 N·cm}, {@code 4 %}, {@code .04}
     * @param asked the unit of the result
     * @param where the field, for the fault
     */
    static Entry read(String text, Unit asked, String where) {
        Matcher matcher = EntryText.NUMBER.matcher(text.strip());
        if (!matcher.matches()) {
            return EntryText.faulty(
                    where, text.isBlank() ? "nothing is entered" : "\"" + text.strip() + "\" is no number", asked);
        }
        double number = Double.parseDouble(matcher.group(1).replace(',', '.').replace('−', '-'));
        String spelling = matcher.group(2).strip();
        Optional<Unit> unit = spelling.isEmpty() ? Optional.of(asked) : Unit.spelled(spelling);
        if (unit.isEmpty() || unit.orElseThrow().kind() != asked.kind()) {
            return EntryText.faulty(where, "\"" + spelling + "\" is no unit for this", asked);
        }
        double value = unit.orElseThrow().in(asked, number);
        if (!Double.isFinite(value)) {
            return EntryText.faulty(where, "\"" + text.strip() + "\" is too large", asked);
        }
        return new Given(value);
    }
}
