package org.taperwright.shaping.instrument;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.quantity.Shown;

/**
 * How the trade names an instrument: size and the taper next to the tip, such as {@code 25/.04}, with the size's colour.
 * Source: ISO 3630-1 for sizes and colours; the slash form is common practice, no source.
 *
 * @param size tip diameter in hundredths of a millimetre, rounded
 * @param taper taper next to the tip, mm/mm
 * @param course how the taper goes on from there
 * @param colour the standard's colour; absent for a size that the series does not have
 */
public record Designation(int size, double taper, TaperCourse course, Optional<SizeColour> colour) {

    /** How a taper goes on from the tip towards the handle. */
    public enum TaperCourse {
        CONSTANT("constant"),
        RISING("rising"),
        FALLING("falling"),
        VARYING("varying");

        private final String word;

        TaperCourse(String word) {
            this.word = word;
        }

        /** The word shown to people. */
        public String word() {
            return word;
        }
    }

    /** The designation of an instrument. */
    public static Designation of(Instrument instrument) {
        return of(instrument.design());
    }

    /** The designation of a design. */
    public static Designation of(Design design) {
        int size = (int) Math.round(design.tipDiameterMm() * 100);
        double taper = design.taper().isEmpty() ? 0 : design.taper().get(0).taper();
        return new Designation(size, taper, course(design.taper()), IsoSizes.colour(size));
    }

    /** Size and taper as written, such as {@code 06/.02} or {@code 25/.04}. */
    public String text() {
        return Shown.designation(size, taper);
    }

    private static TaperCourse course(List<TaperSegment> segments) {
        boolean rises = false;
        boolean falls = false;
        for (int i = 1; i < segments.size(); i++) {
            rises |= segments.get(i).taper() > segments.get(i - 1).taper();
            falls |= segments.get(i).taper() < segments.get(i - 1).taper();
        }
        if (rises && falls) {
            return TaperCourse.VARYING;
        }
        if (rises) {
            return TaperCourse.RISING;
        }
        return falls ? TaperCourse.FALLING : TaperCourse.CONSTANT;
    }
}
