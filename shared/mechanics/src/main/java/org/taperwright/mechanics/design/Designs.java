package org.taperwright.mechanics.design;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;

/** Designs to start from, and changes to them. */
public final class Designs {
    private static final double HAND_LENGTH_MM = 25;

    /** Flutes per mm of a K-type file at the finest and the coarsest size (Ingle, from memory, medium confidence). */
    private static final double FINE = 1.97;

    private static final double COARSE = 0.88;

    private Designs() {}

    /**
     * Quick entry: what size and taper alone suggest. The standard taper gives a hand file of the K type: square, ground
     * from stainless steel, for filing. Any other gives a rotary file: convex triangle, ground from superelastic NiTi, with
     * a passive tip (common practice, no source).
     *
     * @param size tip diameter in hundredths of a millimetre
     * @param taper mm/mm
     */
    public static Design standard(int size, double taper) {
        return taper == IsoSizes.STANDARD_TAPER ? kType(size) : rotary(size, taper);
    }

    private static Design kType(int size) {
        return new Design(
                Shown.designation(size, IsoSizes.STANDARD_TAPER),
                "",
                size / 100.0,
                List.of(new TaperSegment(0, IsoSizes.WORKING_PART_MM, IsoSizes.STANDARD_TAPER)),
                OptionalDouble.empty(),
                HAND_LENGTH_MM,
                List.of(new SectionStation(0, SectionShape.of("square", Map.of("sagitta", 0.0)))),
                List.of(new FluteStation(0, kTypeFlutesPerMm(size))),
                Hand.CLOCKWISE,
                new Tip(TipKind.SEMI_ACTIVE, IsoSizes.TIP_ANGLE_DEG),
                "stainless-steel",
                Making.GROUND,
                Motion.FILING);
    }

    private static Design rotary(int size, double taper) {
        return new Design(
                Shown.designation(size, taper),
                "",
                size / 100.0,
                List.of(new TaperSegment(0, IsoSizes.WORKING_PART_MM, taper)),
                OptionalDouble.empty(),
                HAND_LENGTH_MM,
                List.of(new SectionStation(0, SectionShape.of("triangle", Map.of("sagitta", 0.06)))),
                List.of(new FluteStation(0, 0.9), new FluteStation(IsoSizes.WORKING_PART_MM, 0.6)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, IsoSizes.TIP_ANGLE_DEG),
                "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
    }

    /** Falls from the finest to the coarsest size of the series in equal ratios. */
    private static double kTypeFlutesPerMm(int size) {
        double place = 0;
        for (int number : IsoSizes.sizes()) {
            place += number < size ? 1.0 / (IsoSizes.sizes().size() - 1) : 0;
        }
        double exact = FINE * Math.pow(COARSE / FINE, Math.min(1, place));
        return Math.round(exact * 100) / 100.0;
    }

    /** The same design with something changed: {@code Designs.with(file).tipDiameterMm(0.3).design()}. */
    public static DesignDraft with(Design design) {
        return DesignDraft.of(design);
    }
}
