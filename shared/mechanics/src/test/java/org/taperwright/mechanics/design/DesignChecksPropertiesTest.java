package org.taperwright.mechanics.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.Fault;

/** Designs of any numbers at all. */
class DesignChecksPropertiesTest {
    @Property(tries = 1500)
    void anyDesignIsCheckedWithoutAnExceptionAndFaultsSpeakInWords(@ForAll("designs") Design design) {
        assertThat(DesignChecks.check(design))
                .allSatisfy(fault ->
                        assertThat(fault.sentence()).doesNotContain("NaN").doesNotContain("Infinity"));
    }

    @Property(tries = 1500)
    void aDesignWithNothingImpossibleHasFiniteDiametersWithinTheBlank(@ForAll("designs") Design design) {
        boolean possible =
                DesignChecks.check(design).stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE);
        if (possible) {
            for (double level = 0; level <= design.lengthMm(); level += 0.5) {
                assertThat(design.diameterMm(level)).isGreaterThan(0.05).isLessThanOrEqualTo(2.35 + 1e-9);
                assertThat(design.flutesPerMm(level)).isBetween(0.0, 20.0);
            }
        }
    }

    @Provide
    Arbitrary<Design> designs() {
        Arbitrary<Double> number = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(8, Arbitraries.doubles().between(0, 30)),
                net.jqwik.api.Tuple.of(2, Arbitraries.doubles()),
                net.jqwik.api.Tuple.of(1, Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, -1.0, 0.0)));
        Arbitrary<Double> diameter = Arbitraries.oneOf(Arbitraries.doubles().between(0.06, 1.4), number);
        Arbitrary<Double> taper = Arbitraries.oneOf(Arbitraries.doubles().between(-0.05, 0.15), number);
        Arbitrary<List<TaperSegment>> segments = Arbitraries.oneOf(
                taper.list().ofMinSize(1).ofMaxSize(4).map(DesignChecksPropertiesTest::contiguous),
                Combinators.combine(number, number, taper)
                        .as(TaperSegment::new)
                        .list()
                        .ofMaxSize(3));
        Arbitrary<List<SectionStation>> sections = Combinators.combine(number, shapes())
                .as(SectionStation::new)
                .list()
                .ofMaxSize(3);
        Arbitrary<List<FluteStation>> flutes =
                Combinators.combine(number, number).as(FluteStation::new).list().ofMaxSize(3);
        Arbitrary<Tip> tips =
                Combinators.combine(Arbitraries.of(TipKind.class), number).as(Tip::new);
        Arbitrary<OptionalDouble> shafts =
                Arbitraries.oneOf(Arbitraries.just(OptionalDouble.empty()), diameter.map(OptionalDouble::of));
        return Combinators.combine(diameter, segments, shafts, number, sections, flutes, tips)
                .as((d0, tapers, shaft, length, stations, fluting, tip) -> new Design(
                        "any",
                        "",
                        d0,
                        tapers,
                        shaft,
                        length,
                        stations,
                        fluting,
                        Hand.CLOCKWISE,
                        tip,
                        "stainless-steel",
                        Making.GROUND,
                        Motion.FILING));
    }

    private static List<TaperSegment> contiguous(List<Double> tapers) {
        return java.util.stream.IntStream.range(0, tapers.size())
                .mapToObj(i -> new TaperSegment(4 * i, 4 * (i + 1), tapers.get(i)))
                .toList();
    }

    private static Arbitrary<SectionShape> shapes() {
        return Arbitraries.of(Sections.families()).map(Sections::initialShape);
    }
}
