package org.taperwright.validation;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;

/** The designs and the alloy that the reference values were computed for. */
final class ReferenceDesigns {
    private static final Map<String, SectionShape> SHAPES = Map.of(
            "square", SectionShape.of("square", Map.of()),
            "triangle", SectionShape.of("triangle", Map.of()),
            "convex_triangle", SectionShape.of("triangle", Map.of("sagitta", 0.06)),
            "rhombus07", SectionShape.of("rhombus", Map.of("shortDiagonal", 0.7)),
            "u_flute", SectionShape.of("scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.36, "landAngleDeg", 18.0)));

    private ReferenceDesigns() {}

    /** An untwisted working part of 16 mm. */
    static Design untwisted(String section, double tipDiameterMm, double taper) {
        return of(SHAPES.get(section), tipDiameterMm, taper, 0);
    }

    static Design of(SectionShape shape, double tipDiameterMm, double taper, double flutesPerMm) {
        return new Design(
                "reference",
                "",
                tipDiameterMm,
                List.of(new TaperSegment(0, 16, taper)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, shape)),
                List.of(new FluteStation(0, flutesPerMm)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                "stainless-steel",
                Making.GROUND,
                Motion.FILING);
    }

    static SectionShape shape(String section) {
        return SHAPES.get(section);
    }

    /** A linear alloy. */
    static Alloy alloy(double youngMpa, double poisson, double yieldMpa) {
        return new Alloy(
                "reference",
                "Reference",
                youngMpa,
                new Band(youngMpa, youngMpa),
                poisson,
                yieldMpa,
                new Band(yieldMpa, yieldMpa),
                2 * yieldMpa,
                false,
                "reference values",
                "linear");
    }
}
