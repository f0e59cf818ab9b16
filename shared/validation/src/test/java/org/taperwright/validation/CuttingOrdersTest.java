package org.taperwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.cutting.CuttingGeometries;
import org.taperwright.mechanics.cutting.CuttingGeometry;
import org.taperwright.mechanics.cutting.CuttingResult;
import org.taperwright.mechanics.cutting.CuttingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.SectionShape;

/** Orders of cutting that section and motion studies found, beside ours; disagreements are left in. */
class CuttingOrdersTest {
    private static final String SOURCE = "Cutting: orders by section, land, flutes per mm and motion";

    private static final Map<String, SectionShape> SHAPES = Map.of(
            "square", SectionShape.of("square", Map.of()),
            "triangle", SectionShape.of("triangle", Map.of()),
            "convex triangle", SectionShape.of("triangle", Map.of("sagitta", 0.06)),
            "rhombus", SectionShape.of("rhombus", Map.of("shortDiagonal", 0.7)),
            "three flutes with lands",
                    SectionShape.of("scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.36, "landAngleDeg", 18.0)),
            "three flutes with narrow lands",
                    SectionShape.of("scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.36, "landAngleDeg", 4.0)),
            "double S", SectionShape.of("double-s", Map.of()));

    /** What a study found: more is said to cut more than less. */
    private record Order(String more, String less, Motion motion, String source) {}

    private static final List<Order> ORDERS = List.of(
            new Order(
                    "triangle", "square", Motion.REAMING, "Villalobos, Moser and Heuer, J Endod 1980 (memory, medium)"),
            new Order("rhombus", "square", Motion.REAMING, "Schäfer and others, J Endod 1990s (memory, medium)"),
            new Order("triangle", "rhombus", Motion.REAMING, "Schäfer and others, J Endod 1990s (memory, low)"),
            new Order("triangle", "convex triangle", Motion.ROTATION, "reviews of rotary sections (memory, medium)"),
            new Order(
                    "three flutes with narrow lands",
                    "three flutes with lands",
                    Motion.ROTATION,
                    "reviews of rotary sections (memory, medium)"),
            new Order("convex triangle", "three flutes with lands", Motion.ROTATION, "the same (memory, medium)"),
            new Order("double S", "convex triangle", Motion.ROTATION, "S-shaped sections, Schäfer (memory, medium)"),
            new Order("double S", "square", Motion.ROTATION, "the same (memory, medium)"));

    private static CuttingGeometry blade(SectionShape shape, double flutesPerMm) {
        Design design = ReferenceDesigns.of(shape, 0.25, 0.04, flutesPerMm);
        return CuttingGeometries.of(design, BladeSections.of(design));
    }

    private static CuttingResult cut(String section, Motion motion) {
        return CuttingTest.run(blade(SHAPES.get(section), 0.6), motion);
    }

    @Test
    void ordersOfSectionStudiesStandBesideOursWithDisagreementsLeftIn() {
        StringBuilder table = new StringBuilder("| said to cut more | than | motion | ours, per turn or stroke |"
                + " ours, per joule | source |\n| --- | --- | --- | ---: | ---: | --- |\n");
        int agree = 0;
        for (Order order : ORDERS) {
            CuttingResult more = cut(order.more(), order.motion());
            CuttingResult less = cut(order.less(), order.motion());
            double ratio = more.perPassMm3() / less.perPassMm3();
            agree += ratio > 1 ? 1 : 0;
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s× %.2f | %s× %.2f | %s |%n",
                    order.more(),
                    order.less(),
                    order.motion().word(),
                    ratio > 1 ? "" : "disagrees: ",
                    ratio,
                    more.perJouleMm3() > less.perJouleMm3() ? "" : "disagrees: ",
                    more.perJouleMm3() / less.perJouleMm3(),
                    order.source()));
        }
        Findings.remark(
                SOURCE,
                table + "\nThe numbers of these studies were not recovered, only their orders: " + agree + " of "
                        + ORDERS.size()
                        + " come out per turn or stroke. They were recalled, not read, so they are weak evidence, and"
                        + " instruments of one study differ in more than the section.");
        assertThat(agree).as(table.toString()).isGreaterThanOrEqualTo(ORDERS.size() * 3 / 4);
    }

    /** Thu and others, Appl Sci 2021;11:3079 (review of 52 studies, abstract read): what raises torque. */
    @Test
    void whatRaisesTheTorqueStandsBesideOurs() {
        double convexForce = torque(cut("convex triangle", Motion.ROTATION)) / torque(cut("triangle", Motion.ROTATION));
        double convexRemoval = cut("triangle", Motion.ROTATION).perJouleMm3()
                / cut("convex triangle", Motion.ROTATION).perJouleMm3();
        double shortPitch = torque(CuttingTest.run(blade(SHAPES.get("triangle"), 1.2), Motion.ROTATION))
                / torque(cut("triangle", Motion.ROTATION));
        double large = torque(CuttingTest.run(blade(0.40), Motion.ROTATION))
                / torque(CuttingTest.run(blade(0.25), Motion.ROTATION));
        Findings.remark(
                SOURCE,
                String.format(
                        Locale.ROOT,
                        "Torque by a review of 52 studies (Thu and others 2021, abstract read). Convex triangle, said to raise it:"
                                + " ours × %.2f for the same removal, × %.2f under the same side force%s. Large size, said to"
                                + " raise it: ours × %.2f for 40 against 25. Short pitch, said to raise it: ours × %.2f for half"
                                + " the pitch%s; screwing in is not in the model.",
                        convexRemoval,
                        convexForce,
                        convexForce > 1 ? "" : " (disagrees)",
                        large,
                        shortPitch,
                        shortPitch > 1 ? "" : " (disagrees)"));
        assertThat(convexRemoval).isGreaterThan(1);
        assertThat(large).isGreaterThan(1);
    }

    /** Work of one turn over its angle, per mm of blade, N mm. */
    private static double torque(CuttingResult result) {
        return 1000 * result.perPassMm3() / result.perJouleMm3() / (2 * Math.PI);
    }

    private static CuttingGeometry blade(double tipMm) {
        Design design = ReferenceDesigns.of(SHAPES.get("triangle"), tipMm, 0.04, 0.6);
        return CuttingGeometries.of(design, BladeSections.of(design));
    }

    /** Trade practice; flutes per mm of reamers and K-type files as in a textbook (Ingle, from memory, medium). */
    @Test
    void fewFlutesPerMmSuitReamingAndManySuitFiling() {
        double reamer = ReferenceFile.published("flutes").get("reamer").get(0).asDouble();
        double file = ReferenceFile.published("flutes").get("K_type").get(0).asDouble();
        StringBuilder table = new StringBuilder(
                "| section | flutes per mm | one turn, mm³/mm | one stroke, mm³/mm | stroke over turn |\n"
                        + "| --- | ---: | ---: | ---: | ---: |\n");
        double[] suits = new double[4];
        int i = 0;
        for (String section : List.of("triangle", "square")) {
            for (double flutes : new double[] {reamer, file}) {
                CuttingGeometry blade = blade(SHAPES.get(section), flutes);
                double turn = CuttingTest.run(blade, Motion.REAMING).perPassMm3();
                double stroke = CuttingTest.run(blade, Motion.FILING).perPassMm3();
                suits[i++] = stroke / turn;
                table.append(String.format(
                        Locale.ROOT,
                        "| %s | %.2f | %.2e | %.2e | %.2f |%n",
                        section,
                        flutes,
                        turn,
                        stroke,
                        stroke / turn));
            }
        }
        Findings.remark(
                SOURCE,
                table
                        + "\nBy itself the model has filing gain in proportion to flutes per mm while a turn removes much the"
                        + " same: so few flutes per mm suit reaming and many suit filing by comparison. That reaming as such"
                        + " is hindered by many flutes is not in it.");
        assertThat(suits[1]).isGreaterThan(2 * suits[0]);
        assertThat(suits[3]).isGreaterThan(2 * suits[2]);
    }

    /** Bull Natl Res Cent 2021;45 (10.1186/s42269-021-00579-x, abstract read): motion matters little, design more. */
    @Test
    void rotationAndReciprocationDifferLessThanSectionsDo() {
        double turning = cut("convex triangle", Motion.ROTATION).perSecondMm3();
        double reciprocating = cut("convex triangle", Motion.RECIPROCATION).perSecondMm3();
        double otherSection = cut("three flutes with lands", Motion.ROTATION).perSecondMm3();
        Findings.remark(
                SOURCE,
                String.format(
                        Locale.ROOT,
                        "Reciprocation against rotation at one speed: ours × %.2f; a study of two designs found no significant"
                                + " difference between motions and one between sections (Bull Natl Res Cent 2021,"
                                + " 10.1186/s42269-021-00579-x, abstract read).",
                        reciprocating / turning));
        assertThat(reciprocating).isBetween(0.7 * turning, 1.3 * turning);
        assertThat(otherSection).isLessThan(0.7 * turning);
    }

    /** Room for chips: triangle about 60 %, square about 36 % of the circle (figures of a clinic's page, read). */
    @Test
    void chipSpaceIsWhatIsQuotedForTriangleAndSquare() {
        Findings.hold(
                SOURCE,
                "triangle: chip space, share",
                0.60,
                blade(SHAPES.get("triangle"), 1).chipSpaceShare(),
                0.03,
                "quoted to whole per cent; exact 58.65 %");
        Findings.hold(
                SOURCE,
                "square: chip space, share",
                0.36,
                blade(SHAPES.get("square"), 1).chipSpaceShare(),
                0.02,
                "quoted to whole per cent; exact 36.34 %");
    }
}
