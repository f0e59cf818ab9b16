package org.taperwright.workbench.ui;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.shaping.instrument.Window;

/**
 * How a value that is no plain quantity is written in a field.
 *
 * @param reading the value a text means; empty when it means none
 * @param writing the value as it stands in a field
 * @param expected what is expected, in words
 */
public record Written<T>(Function<String, Optional<T>> reading, Function<T, String> writing, String expected) {
    private static final String NOT_STATED = "; empty when not stated";

    /** A day, or none. */
    public static Written<Optional<LocalDate>> day() {
        return new Written<>(
                text -> orNone(text, Written::readDay),
                value -> value.map(LocalDate::toString).orElse(""),
                "a day such as 2027-03-31" + NOT_STATED);
    }

    /** A whole number from 0; nothing is 0. */
    public static Written<Integer> count(int most) {
        return new Written<>(
                text -> text.isBlank() ? Optional.of(0) : readCount(text.strip(), most),
                value -> Integer.toString(value),
                "a whole number from 0 to " + most);
    }

    /**
     * A range such as {@code 250–400 rpm}, or none; a single number is both ends.
     *
     * @param shown the unit written
     * @param kept the unit of the record
     */
    public static Written<Optional<Window>> window(Unit shown, Unit kept) {
        return new Written<>(
                text -> orNone(text, entered -> readWindow(entered, shown, kept)),
                value -> value.map(window -> write(window, shown, kept)).orElse(""),
                "a range in " + shown.symbol() + " such as 2–4" + NOT_STATED);
    }

    /** As {@link #window}, but never none. */
    public static Written<Window> range(Unit shown, Unit kept) {
        return new Written<>(
                text -> readWindow(text.strip(), shown, kept),
                window -> write(window, shown, kept),
                "a range in " + shown.symbol() + " such as 2–4");
    }

    private static <T> Optional<Optional<T>> orNone(String text, Function<String, Optional<T>> reading) {
        return text.isBlank()
                ? Optional.of(Optional.empty())
                : reading.apply(text.strip()).map(Optional::of);
    }

    private static Optional<LocalDate> readDay(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }

    private static Optional<Integer> readCount(String text, int most) {
        try {
            int value = Integer.parseInt(text);
            return value >= 0 && value <= most ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException other) {
            return Optional.empty();
        }
    }

    private static Optional<Window> readWindow(String text, Unit shown, Unit kept) {
        String[] ends = text.split("\\s*(?:–|-|to)\\s*", 2);
        OptionalDouble most = number(ends[ends.length - 1], shown, kept);
        Unit meant = ends.length == 2 && number(ends[0], shown, kept).isPresent() ? unit(ends[1], shown) : shown;
        OptionalDouble least = ends.length == 2 ? number(ends[0], meant, kept) : most;
        return least.isPresent()
                        && most.isPresent()
                        && least.getAsDouble() >= 0
                        && least.getAsDouble() <= most.getAsDouble()
                ? Optional.of(new Window(least.getAsDouble(), most.getAsDouble()))
                : Optional.empty();
    }

    /** The unit that stands after the upper end holds for the lower too. */
    private static Unit unit(String end, Unit otherwise) {
        for (Unit unit : Unit.values()) {
            if (!unit.symbol().isEmpty() && end.strip().endsWith(unit.symbol())) {
                return unit;
            }
        }
        return otherwise;
    }

    private static OptionalDouble number(String text, Unit shown, Unit kept) {
        return Entry.read(text, shown, "") instanceof Entry.Given given
                ? OptionalDouble.of(shown.in(kept, given.value()))
                : OptionalDouble.empty();
    }

    private static String write(Window window, Unit shown, Unit kept) {
        String least = Shown.number(kept.in(shown, window.least()), 0, 2);
        String most = Shown.number(kept.in(shown, window.most()), 0, 2);
        String unit = shown == Unit.DEGREE ? shown.symbol() : " " + shown.symbol();
        return (least.equals(most) ? least : least + "–" + most) + unit;
    }
}
