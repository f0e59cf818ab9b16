package org.taperwright.mechanics.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * How numbers are written for people: three significant digits unless the trade writes otherwise, a point as decimal
 * sign, no superfluous zeros, never a rounding tail such as 0.43999999. A number that is none is said in words.
 */
public final class Shown {
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);
    /** Below and above these a power of ten is written. */
    private static final double SMALL = 1e-4;

    private static final double LARGE = 1e7;

    private Shown() {}

    /** Three significant digits. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return none(value);
        }
        double size = Math.abs(value);
        BigDecimal rounded = new BigDecimal(value, THREE).stripTrailingZeros();
        if (value != 0 && (size < SMALL || size >= LARGE)) {
            int power = rounded.precision() - rounded.scale() - 1;
            String digits = rounded.movePointLeft(power).stripTrailingZeros().toPlainString();
            return digits + "·10" + superscript(power);
        }
        return plain(rounded);
    }

    /** So many decimals at most, without trailing zeros beyond the least. */
    public static String number(double value, int leastDecimals, int mostDecimals) {
        if (!Double.isFinite(value)) {
            return none(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(mostDecimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return plain(
                rounded.scale() < leastDecimals ? rounded.setScale(leastDecimals, RoundingMode.UNNECESSARY) : rounded);
    }

    /** The ends of a band: {@code 1.2 to 3.4}; one number where both are written alike. */
    public static String band(Band band) {
        String low = number(band.low());
        String high = number(band.high());
        return low.equals(high) ? low : low + " to " + high;
    }

    /** A number in a unit, three significant digits. */
    public static String of(double value, Unit unit) {
        return withUnit(number(value), unit);
    }

    /** A level or length to a thousandth of a millimetre: {@code 16 mm}, {@code 0.25 mm}. */
    public static String mm(double value) {
        return withUnit(number(value, 0, 3), Unit.MILLIMETRE);
    }

    /** A diameter as the trade writes it, with at least two decimals: {@code 0.30 mm}. */
    public static String diameter(double mm) {
        return withUnit(number(mm, 2, 3), Unit.MILLIMETRE);
    }

    /** An angle to a tenth of a degree: {@code -30°}. */
    public static String degrees(double value) {
        return withUnit(number(value, 0, 1), Unit.DEGREE);
    }

    /** A share in per cent: 0.04 is {@code 4 %}. */
    public static String percent(double share) {
        return withUnit(number(share * 100), Unit.PERCENT);
    }

    /** A speed: {@code 300 rpm}. */
    public static String rpm(double value) {
        return withUnit(number(value, 0, 0), Unit.RPM);
    }

    /** A torque or moment given in N·mm, in the unit that motors and handbooks use: {@code 2 N·cm}. */
    public static String torque(double newtonMillimetres) {
        return of(Unit.NEWTON_MILLIMETRE.in(Unit.NEWTON_CENTIMETRE, newtonMillimetres), Unit.NEWTON_CENTIMETRE);
    }

    /** A torque in both units: {@code 20 N·mm (2 N·cm)}. */
    public static String torqueInBoth(double newtonMillimetres) {
        return of(newtonMillimetres, Unit.NEWTON_MILLIMETRE) + " (" + torque(newtonMillimetres) + ")";
    }

    /** A bench test's moment in all units in use: {@code 11.8 N·mm (1.18 N·cm, 120 g·cm)}. */
    public static String benchMoment(double newtonMillimetres) {
        double gramCentimetres = Unit.NEWTON_MILLIMETRE.in(Unit.GRAM_CENTIMETRE, newtonMillimetres);
        return of(newtonMillimetres, Unit.NEWTON_MILLIMETRE) + " (" + torque(newtonMillimetres) + ", "
                + of(gramCentimetres, Unit.GRAM_CENTIMETRE) + ")";
    }

    /** A taper as in designations: 0.04 is {@code .04}, 0.045 is {@code .045}, -0.02 is {@code -.02}. */
    public static String taper(double taper) {
        return number(taper, 2, 4).replaceFirst("^(-?)0\\.", "$1.");
    }

    /** Size and taper as in designations: {@code 25/.04}, {@code 06/.02}. */
    public static String designation(int size, double taper) {
        return String.format(Locale.ROOT, "%02d/%s", size, taper(taper));
    }

    private static String withUnit(String number, Unit unit) {
        return switch (unit) {
            case NONE -> number;
            case DEGREE -> number + unit.symbol();
            default -> number + " " + unit.symbol();
        };
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 && value.scale() <= 0 ? "0" : value.toPlainString();
    }

    private static String none(double value) {
        if (Double.isNaN(value)) {
            return "not a number";
        }
        return value > 0 ? "infinite" : "minus infinite";
    }

    private static String superscript(int power) {
        StringBuilder result = new StringBuilder();
        for (char digit : Integer.toString(power).toCharArray()) {
            result.append(digit == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
        }
        return result.toString();
    }
}
