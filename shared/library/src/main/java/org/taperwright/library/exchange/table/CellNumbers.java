package org.taperwright.library.exchange.table;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;

/** Reads and writes the numbers of a column: with the table's decimal sign, with or without a unit. */
final class CellNumbers {
    private static final int LONGEST = 60;
    private static final Pattern PREFIX = Pattern.compile("(?i)(#|iso|size|no\\.?)\\s*");
    private static final Pattern UNIT = Pattern.compile("[+\\-−]?[0-9.,]+(?:[eE][+-]?[0-9]+)?(.*)", Pattern.DOTALL);

    private final TableField field;
    private final Optional<String> unit;
    private final char decimal;
    private final Pattern number;

    CellNumbers(TableField field, Optional<String> unit, char decimal) {
        this.field = field;
        this.unit = unit;
        this.decimal = decimal;
        String sign = Pattern.quote(String.valueOf(decimal));
        this.number = Pattern.compile(
                "([+\\-−]?(?:\\d+(?:" + sign + "\\d*)?|" + sign + "\\d+)(?:[eE][+-]?\\d+)?)([^0-9.,].*)?",
                Pattern.DOTALL);
    }

    /** A number in the field's unit. */
    Optional<Double> number(String text) {
        return in(text, field.unit().orElse(Unit.NONE));
    }

    /** A tip diameter, mm, from a size in hundredths of a millimetre or from a diameter with its unit. */
    Optional<Double> size(String text) {
        Matcher prefix = PREFIX.matcher(text);
        String bare = prefix.lookingAt() ? text.substring(prefix.end()) : text;
        if (unit.isPresent() || !unitOf(bare).isBlank()) {
            return in(bare, Unit.MILLIMETRE);
        }
        return in(bare, Unit.NONE)
                .filter(size -> size == 0 || Math.abs(size) >= 1)
                .map(size -> moved(size, -2));
    }

    /** A taper, mm per mm; a bare number of 1 or more is in per cent. */
    Optional<Double> taper(String text) {
        String column = unit.map(String::strip).orElse("");
        String own = unitOf(text).strip();
        if (own.equals("%") || own.isEmpty() && column.equals("%")) {
            return plain(text.replace("%", "").strip()).map(percent -> moved(percent, -2));
        }
        boolean bare = unit.isEmpty() && own.isEmpty();
        return in(text, Unit.NONE).map(taper -> bare && Math.abs(taper) >= 1 ? moved(taper, -2) : taper);
    }

    /** A number without a unit. */
    Optional<Double> plain(String text) {
        Matcher matcher = number.matcher(text);
        boolean bare = text.length() <= LONGEST && matcher.matches() && matcher.group(2) == null;
        return bare ? Optional.of(Double.parseDouble(text.replace(decimal, '.').replace('−', '-'))) : Optional.empty();
    }

    private Optional<Double> in(String text, Unit asked) {
        Matcher matcher = number.matcher(text);
        if (text.length() > LONGEST || !matcher.matches()) {
            return Optional.empty();
        }
        String own = matcher.group(2) == null ? "" : matcher.group(2);
        String spelling = own.isBlank() ? unit.orElse("") : own;
        String plain = matcher.group(1).replace(decimal, '.') + ' ' + spelling.strip();
        return Entry.read(plain, asked, field.heading()) instanceof Entry.Given given
                ? Optional.of(given.value())
                : Optional.empty();
    }

    /** What a cell of the field should have held. */
    String expected() {
        String sign = decimal == ',' ? " with a decimal comma" : "";
        return switch (field.kind()) {
            case SIZE ->
                "expected a size in hundredths of a millimetre, such as 25, or a tip diameter with its unit,"
                        + " such as 0" + decimal + "25 mm";
            case TAPER -> "expected a taper, such as 0" + decimal + "04 or 4 %";
            default ->
                "expected a number" + sign
                        + field.unit()
                                .map(Unit::symbol)
                                .filter(symbol -> !symbol.isEmpty())
                                .map(symbol -> ", " + symbol)
                                .orElse("");
        };
    }

    /** What follows the number in a text. */
    static String unitOf(String text) {
        Matcher matcher = UNIT.matcher(text);
        return matcher.matches() ? matcher.group(1) : "";
    }

    /** A double moved by decimal places, exactly as its shortest decimal says. */
    static double moved(double value, int places) {
        return value == 0
                ? value
                : BigDecimal.valueOf(value).scaleByPowerOfTen(places).doubleValue();
    }

    /** A number as JSON has it. */
    static String written(double value) {
        return String.format(Locale.ROOT, "%s", value);
    }
}
