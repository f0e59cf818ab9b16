package org.taperwright.mechanics.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The series of sizes: 06, 08, 10, then 15 to 60 by 5 and 70 to 140 by 10, with colours, taper and lengths.
 *
 * <p>Source: ISO 3630-1 (sizes, colours and tolerances of the 1992 table from memory, high confidence, tolerances
 * medium). Taper 0.02, lengths 21, 25 and 31 mm and the working part of at least 16 mm: read in Kim, Lee, Lee and Park,
 * J Korean Acad Conserv Dent 2010;35(6), citing ANSI No. 28 and 58; the length of 28 mm and the lengths' tolerance of
 * 0.5 mm from memory, medium confidence. Tip angle 75° ± 15°: read in notes quoting a textbook, and from memory.
 */
public final class IsoSizes {
    /** Taper of the standard's series, mm/mm. */
    public static final double STANDARD_TAPER = 0.02;

    /** Least length of the working part, mm. */
    public static final double WORKING_PART_MM = 16;

    /** Nominal angle of a cutting tip, degrees. */
    public static final double TIP_ANGLE_DEG = 75;

    /** How far the tip's angle may be off nominal, degrees. */
    public static final double TIP_ANGLE_TOLERANCE_DEG = 15;

    /** How far a length may be off nominal, mm. */
    public static final double LENGTH_TOLERANCE_MM = 0.5;

    private static final List<IsoSize> SERIES = series();
    private static final List<Integer> NUMBERS =
            SERIES.stream().map(IsoSize::number).toList();
    private static final List<Double> LENGTHS_MM = List.of(21.0, 25.0, 28.0, 31.0);

    private IsoSizes() {}

    private static List<IsoSize> series() {
        List<IsoSize> result = new ArrayList<>();
        result.add(new IsoSize(6, SizeColour.PINK));
        result.add(new IsoSize(8, SizeColour.GREY));
        result.add(new IsoSize(10, SizeColour.PURPLE));
        List<SizeColour> repeating = List.of(
                SizeColour.WHITE,
                SizeColour.YELLOW,
                SizeColour.RED,
                SizeColour.BLUE,
                SizeColour.GREEN,
                SizeColour.BLACK);
        for (int number = 15; number <= 140; number += number < 60 ? 5 : 10) {
            result.add(new IsoSize(number, repeating.get((result.size() - 3) % repeating.size())));
        }
        return List.copyOf(result);
    }

    /** All sizes, rising. */
    public static List<IsoSize> all() {
        return SERIES;
    }

    /** The numbers of all sizes, rising. */
    public static List<Integer> sizes() {
        return NUMBERS;
    }

    /** Standard lengths from tip to handle, mm. */
    public static List<Double> lengthsMm() {
        return LENGTHS_MM;
    }

    /** The size of a number; empty when the series does not have it. */
    public static Optional<IsoSize> find(int number) {
        return SERIES.stream().filter(size -> size.number() == number).findFirst();
    }

    /** The size of a tip diameter to the nearest hundredth of a millimetre; empty when the series does not have it. */
    public static Optional<IsoSize> ofTip(double tipDiameterMm) {
        return find((int) Math.round(tipDiameterMm * 100));
    }

    /** The colour of a size; empty when the series does not have it. */
    public static Optional<SizeColour> colour(int number) {
        return find(number).map(IsoSize::colour);
    }

    /** A size as written, with at least two digits. */
    public static String text(int number) {
        return String.format(Locale.ROOT, "%02d", number);
    }
}
