package org.taperwright.workbench.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.OptionalDouble;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Unit;
import org.taperwright.mechanics.section.FamilyParameter;

/**
 * How a number is entered in a field: its unit, range, step, and how many decimals are written.
 *
 * @param unit written after the number; empty for a plain number
 * @param least smallest value a person may enter
 * @param most largest value a person may enter
 * @param step how far one press of an arrow moves it
 * @param leastDecimals decimals always written (0.30 mm)
 * @param mostDecimals decimals kept
 * @param otherUnits units also understood, with the factor that turns them into this unit
 */
public record QuantityKind(
        String unit,
        double least,
        double most,
        double step,
        int leastDecimals,
        int mostDecimals,
        Map<String, Double> otherUnits) {
    /** Beyond any quantity here; keeps nonsense from being written out in full. */
    private static final double LARGEST = 1e9;

    public QuantityKind {
        otherUnits = Map.copyOf(otherUnits);
    }

    /** A diameter: always two decimals. */
    public static QuantityKind diameter(double least, double most, double step) {
        return new QuantityKind("mm", least, most, step, 2, 4, Map.of("\u00b5m", 1e-3, "um", 1e-3));
    }

    /** A length or level along the axis. */
    public static QuantityKind length(double least, double most, double step) {
        return new QuantityKind("mm", least, most, step, 0, 3, Map.of("\u00b5m", 1e-3, "um", 1e-3, "cm", 10.0));
    }

    /** A taper in mm per mm, which people also write in per cent. */
    public static QuantityKind taper() {
        return new QuantityKind("", -0.2, 0.3, 0.005, 2, 4, Map.of("mm/mm", 1.0));
    }

    /** An angle. */
    public static QuantityKind degrees(double least, double most, double step) {
        return new QuantityKind("\u00b0", least, most, step, 0, 2, Map.of("rad", 180 / Math.PI));
    }

    /** A count per mm. */
    public static QuantityKind perMillimetre(double least, double most, double step) {
        return new QuantityKind("per mm", least, most, step, 2, 4, Map.of("/mm", 1.0, "1/mm", 1.0));
    }

    /** A length in diameters of the section. */
    public static QuantityKind shareOfDiameter(double least, double most, double step) {
        return new QuantityKind("d", least, most, step, 2, 4, Map.of());
    }

    /** What a section family declares. */
    public static QuantityKind of(FamilyParameter parameter) {
        int decimals = parameter.whole() ? 0 : 4;
        return new QuantityKind(
                parameter.unit(), parameter.least(), parameter.most(), parameter.step(), 0, decimals, Map.of());
    }

    /** The value as it stands in a field, such as {@code 0.25 mm}. */
    public String write(double value) {
        String number = number(value);
        if (unit.isEmpty()) {
            return number;
        }
        return unit.equals("\u00b0") ? number + unit : number + " " + unit;
    }

    /** The number alone, without superfluous decimals. */
    public String number(double value) {
        return Shown.number(value, leastDecimals, mostDecimals);
    }

    /** The value a person means, or absent when the text is no such quantity. */
    public OptionalDouble value(String text) {
        OptionalDouble bare = read(text, known());
        if (bare.isPresent()) {
            return bare;
        }
        String written = text.strip();
        if (!unit.isEmpty() && written.endsWith(unit)) {
            return read(written.substring(0, written.length() - unit.length()), Unit.NONE);
        }
        return otherUnits.entrySet().stream()
                .filter(other -> written.endsWith(other.getKey()))
                .max(Comparator.comparingInt(other -> other.getKey().length()))
                .map(other -> scaled(written, other.getKey(), other.getValue()))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble scaled(String written, String ending, double factor) {
        OptionalDouble number = read(written.substring(0, written.length() - ending.length()), Unit.NONE);
        return number.isPresent() ? OptionalDouble.of(kept(number.getAsDouble() * factor)) : number;
    }

    private OptionalDouble read(String text, Unit asked) {
        return Entry.read(text, asked, "") instanceof Entry.Given given && Math.abs(given.value()) < LARGEST
                ? OptionalDouble.of(kept(given.value()))
                : OptionalDouble.empty();
    }

    /** The unit of the engine that has this symbol; none for counts per mm and lengths in diameters. */
    private Unit known() {
        return Arrays.stream(Unit.values())
                .filter(known -> known.symbol().equals(unit))
                .findFirst()
                .orElse(Unit.NONE);
    }

    /** What is expected, in words: {@code a number in mm from 0.06 to 1.4}. */
    public String expectation() {
        String in = unit.isEmpty() || unit.equals("d") ? "" : " in " + unit;
        String diameters = unit.equals("d") ? " in diameters of the section" : "";
        return (mostDecimals == 0 ? "a whole number" : "a number") + in + diameters + " from " + number(least) + " to "
                + number(most);
    }

    /** Whether the value lies in the range. */
    public boolean allows(double value) {
        return value >= least - 1e-12 && value <= most + 1e-12;
    }

    /** The value moved by so many steps, kept in the range. */
    public double stepped(double value, int steps) {
        return kept(Math.max(least, Math.min(most, value + steps * step)));
    }

    private double kept(double value) {
        return BigDecimal.valueOf(value)
                .setScale(mostDecimals, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}
