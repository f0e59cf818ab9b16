package org.taperwright.validation;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
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
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;

/** The designs and the alloy that the reference values were computed for. */
final class ReferenceDesigns {
    /** Sides of the polygon that stands for a circle: its second moment is less by 3e-5. */
    private static final int SIDES = 720;

    private static final Map<String, SectionShape> SHAPES = Map.of(
            "circle", polygon(),
            "square", SectionShape.of("square", Map.of()),
            "triangle", SectionShape.of("triangle", Map.of()),
            "convex_triangle", SectionShape.of("triangle", Map.of("sagitta", 0.06)),
            "rhombus07", SectionShape.of("rhombus", Map.of("shortDiagonal", 0.7)),
            "u_flute", SectionShape.of("scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.36, "landAngleDeg", 18.0)));

    private ReferenceDesigns() {}

    private static SectionShape polygon() {
        return new SectionShape(
                "custom",
                Map.of(),
                0,
                0,
                IntStream.range(0, SIDES)
                        .mapToObj(i -> Point.polar(0.5, 2 * Math.PI * i / SIDES))
                        .toList());
    }

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

    /** An alloy that follows Hooke's law up to a yield. */
    static Alloy alloy(double youngMpa, double poisson, double yieldMpa) {
        return alloy(
                youngMpa,
                poisson,
                yieldMpa,
                "hardening",
                Map.of(
                        "hardeningMpa",
                        Reading.of(0),
                        "shearStrengthMpa",
                        Reading.of(0),
                        "fractureShearStrain",
                        Reading.of(1)));
    }

    /** The trilinear alloy of the reference values: 36 GPa to 1.2 %, 500 MPa to 5 %, 20 GPa beyond. */
    static Alloy trilinear(double asymmetry) {
        return alloy(
                36_000,
                0.3,
                432,
                "superelastic",
                Map.of(
                        "plateauEndStrain", Reading.of(0.05),
                        "plateauMpa", Reading.of(500),
                        "martensiteMpa", Reading.of(20_000),
                        "martensiteYieldMpa", Reading.of(1e6),
                        "asymmetry", Reading.of(asymmetry),
                        "shearStrengthMpa", Reading.of(1e6),
                        "fractureShearStrain", Reading.of(1)));
    }

    private static Alloy alloy(
            double youngMpa, double poisson, double yieldMpa, String law, Map<String, Reading> constants) {
        return new Alloy(
                "reference",
                "Reference",
                youngMpa,
                new Band(youngMpa, youngMpa),
                poisson,
                yieldMpa,
                new Band(yieldMpa, yieldMpa),
                2 * yieldMpa,
                law,
                constants,
                false,
                "reference values",
                "as the reference says");
    }
}
