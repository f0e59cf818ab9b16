package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;

/** Every family over its whole parameter space, with any land and any rounding. */
class FamiliesPropertiesTest {
    @Property(tries = 2000)
    void everyShapeWithinLimitsIsASoundOutlineOrRefusedWithAReason(@ForAll("shapes") SectionShape shape) {
        OutlineResult result = Sections.outline(shape);
        OutlineSoundness.check(result);
        Statistics.collect(result instanceof OutlineResult.Drawn);
        Statistics.coverage(share -> share.check(true).percentage(each -> each > 20));
    }

    @Property(tries = 1000)
    void sharpSectionsWithinLimitsAreDrawnExceptScallopsThatDoNotFit(@ForAll("sharp") SectionShape shape) {
        if (!shape.family().equals("scalloped")) {
            assertThat(Sections.outline(shape)).isInstanceOf(OutlineResult.Drawn.class);
            assertThat(Sections.edges(Drawn.shape(shape), Hand.CLOCKWISE)).isNotEmpty();
        }
    }

    @Property(tries = 500)
    void numbersOutsideTheLimitsAreRefusedAtTheirField(
            @ForAll("families") SectionFamily family, @ForAll("wild") double wild) {
        for (FamilyParameter parameter : family.parameters()) {
            boolean within = wild >= parameter.least() && wild <= parameter.most();
            if (!within) {
                assertThat(Drawn.faults(SectionShape.of(family.id(), Map.of(parameter.name(), wild))))
                        .anyMatch(fault -> fault.where().equals("parameters." + parameter.name()));
            }
        }
    }

    @Property(tries = 500)
    void turningTheOutlineTurnsTheEdgesAndNothingElse(
            @ForAll("shapes") SectionShape shape, @ForAll("turns") double angle) {
        if (!(Sections.outline(shape) instanceof OutlineResult.Drawn drawn)) {
            return;
        }
        List<Edge> before = Sections.edges(drawn.outline(), Hand.CLOCKWISE);
        List<Edge> after = Sections.edges(Outlines.turned(drawn.outline(), angle), Hand.CLOCKWISE);
        assertThat(after).hasSameSizeAs(before);
        for (Edge edge : before) {
            Point expected = edge.at().turned(angle);
            assertThat(after).anyMatch(other -> other.at().distanceTo(expected) < 1e-9 && sameAngles(edge, other));
        }
    }

    @Property(tries = 500)
    void mirroringTheOutlineChangesTheHand(@ForAll("shapes") SectionShape shape) {
        if (!(Sections.outline(shape) instanceof OutlineResult.Drawn drawn)) {
            return;
        }
        List<Edge> before = Sections.edges(drawn.outline(), Hand.ANTICLOCKWISE);
        List<Edge> after = Sections.edges(Outlines.mirrored(drawn.outline()), Hand.CLOCKWISE);
        assertThat(after).hasSameSizeAs(before);
        for (Edge edge : before) {
            Point expected = new Point(edge.at().x(), -edge.at().y());
            assertThat(after).anyMatch(other -> other.at().distanceTo(expected) < 1e-9 && sameAngles(edge, other));
        }
    }

    private static boolean sameAngles(Edge a, Edge b) {
        return Math.abs(a.rakeDeg() - b.rakeDeg()) < 1e-6
                && Math.abs(a.wedgeDeg() - b.wedgeDeg()) < 1e-6
                && Math.abs(a.landWidth() - b.landWidth()) < 1e-9;
    }

    @Provide
    Arbitrary<SectionFamily> families() {
        return Arbitraries.of(Sections.families().stream()
                .filter(family -> !family.takesPoints())
                .toList());
    }

    @Provide
    Arbitrary<SectionShape> sharp() {
        return families().flatMap(FamiliesPropertiesTest::parameters);
    }

    private static Arbitrary<SectionShape> parameters(SectionFamily family) {
        return Arbitraries.doubles()
                .between(0, 1)
                .ofScale(4)
                .list()
                .ofSize(family.parameters().size())
                .map(shares -> {
                    Map<String, Double> values = new TreeMap<>();
                    for (int i = 0; i < shares.size(); i++) {
                        FamilyParameter parameter = family.parameters().get(i);
                        double value = parameter.least() + shares.get(i) * (parameter.most() - parameter.least());
                        values.put(parameter.name(), parameter.whole() ? Math.rint(value) : value);
                    }
                    return SectionShape.of(family.id(), values);
                });
    }

    @Provide
    Arbitrary<SectionShape> shapes() {
        Arbitrary<Double> rounding = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(0.0)),
                Tuple.of(2, Arbitraries.doubles().between(0.0005, 0.05).ofScale(5)));
        Arbitrary<Double> land = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(0.0)),
                Tuple.of(2, Arbitraries.doubles().between(0.002, 0.3).ofScale(4)));
        return net.jqwik.api.Combinators.combine(sharp(), rounding, land)
                .as((shape, r, w) -> new SectionShape(shape.family(), shape.parameters(), r, w, List.of()));
    }

    @Provide
    Arbitrary<Double> wild() {
        return Arbitraries.oneOf(
                Arbitraries.doubles(), Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY));
    }

    @Provide
    Arbitrary<Double> turns() {
        return Arbitraries.doubles().between(-10, 10);
    }
}
