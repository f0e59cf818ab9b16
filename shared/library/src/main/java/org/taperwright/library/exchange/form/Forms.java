package org.taperwright.library.exchange.form;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Picture;

/** The forms of plain values. */
public final class Forms {
    private static final int NAME = 200;
    private static final int NOTE = 20_000;
    private static final Pattern IDENTIFIER = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,79}");
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    private Forms() {}

    /** A finite number from least to most, with its unit for people. */
    public static Form<Double> number(double least, double most, String unit) {
        return new NumberForm(least, most, unit);
    }

    /** A whole number from least to most. */
    public static Form<Integer> whole(int least, int most) {
        return new WholeNumberForm(least, most);
    }

    /** True or false. */
    public static Form<Boolean> flag() {
        return new FlagForm();
    }

    /** What a thing is called: 1 to 200 characters. */
    public static Form<String> name() {
        return new TextForm(1, NAME);
    }

    /** A short line of text, at most 200 characters. */
    public static Form<String> line() {
        return new TextForm(0, NAME);
    }

    /** Free text, at most 20,000 characters. */
    public static Form<String> note() {
        return new TextForm(0, NOTE);
    }

    /** The identifier of a thing. */
    public static Form<ThingId> thing() {
        return identifier(ThingId::new, ThingId::value);
    }

    /** An identifier of something outside the library, such as an alloy or a section family. */
    public static Form<String> identifier() {
        return identifier(Function.identity(), Function.identity());
    }

    private static <T> Form<T> identifier(Function<String, T> made, Function<T, String> written) {
        return new PatternForm<>(
                IDENTIFIER,
                "an identifier: letters, digits, dots and hyphens, at most 80",
                text -> Optional.of(made.apply(text)),
                written);
    }

    /** A day of the calendar, as ISO 8601 writes it. */
    public static Form<LocalDate> date() {
        return new PatternForm<>(DATE, "a date, such as 2027-03-31", Forms::day, LocalDate::toString);
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException notInTheCalendar) {
            return Optional.empty();
        }
    }

    /** A currency's code of ISO 4217. */
    public static Form<String> currency() {
        return new PatternForm<>(
                CURRENCY, "a currency's code of three capital letters", Optional::of, Function.identity());
    }

    /** A small picture. */
    public static Form<Picture> picture() {
        return new PictureForm();
    }

    /** One of a few words. */
    public static <T> Form<T> word(T[] choices, Function<T, String> word) {
        return new WordForm<>(List.of(choices), word);
    }

    /** A list. */
    public static <T> Form<List<T>> list(Form<T> item, int fewest, int most) {
        return new ListForm<>(item, fewest, most);
    }

    /** Numbers by name. */
    public static Form<Map<String, Double>> numbersByName(Form<Double> number, int most) {
        return new NumbersByNameForm(number, most);
    }
}
