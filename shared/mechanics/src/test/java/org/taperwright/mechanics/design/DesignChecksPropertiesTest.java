package org.taperwright.mechanics.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.Fault;

/** Designs of any numbers at all. */
class DesignChecksPropertiesTest {
    @Property(tries = 400)
    void anyDesignIsCheckedWithoutAnExceptionAndFaultsSpeakInWords(@ForAll("designs") Design design) {
        assertThat(DesignChecks.check(design))
                .allSatisfy(fault ->
                        assertThat(fault.sentence()).doesNotContain("NaN").doesNotContain("Infinity"));
    }

    @Property(tries = 400)
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

    /** Each field is sound most of the time, so that both kinds of design occur. */
    @Provide
    Arbitrary<Design> designs() {
        return Combinators.combine(
                        mostly(number(0.06, 1), wild()),
                        mostly(
                                number(-0.01, 0.06)
                                        .list()
                                        .ofMinSize(1)
                                        .ofMaxSize(4)
                                        .map(this::contiguous),
                                Combinators.combine(wild(), wild(), wild())
                                        .as(TaperSegment::new)
                                        .list()
                                        .ofMaxSize(3)),
                        mostly(number(0.06, 2).map(OptionalDouble::of), wild().map(OptionalDouble::of)),
                        mostly(number(21, 31), wild()),
                        stations(SectionStation::new, shapes()),
                        stations(FluteStation::new, mostly(number(0, 3), wild())),
                        mostly(number(60, 90), wild()))
                .as((d0, tapers, shaft, length, sections, flutes, tip) -> new Design(
                        "any",
                        "",
                        d0,
                        tapers,
                        shaft,
                        length,
                        sections,
                        flutes,
                        Hand.CLOCKWISE,
                        new Tip(TipKind.PASSIVE, tip),
                        "stainless-steel",
                        Making.GROUND,
                        Motion.FILING));
    }

    private static Arbitrary<Double> number(double least, double most) {
        return Arbitraries.doubles().between(least, most).ofScale(4);
    }

    private static Arbitrary<Double> wild() {
        return Arbitraries.oneOf(
                Arbitraries.doubles(), Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, -1.0, 0.0, 1e-300));
    }

    private static <T> Arbitrary<T> mostly(Arbitrary<T> sound, Arbitrary<T> wild) {
        return Arbitraries.frequencyOf(Tuple.of(15, sound), Tuple.of(1, wild));
    }

    private static <S, V> Arbitrary<List<S>> stations(BiFunction<Double, V, S> station, Arbitrary<V> values) {
        return mostly(
                values.list()
                        .ofMinSize(1)
                        .ofMaxSize(3)
                        .map(list -> IntStream.range(0, list.size())
                                .mapToObj(i -> station.apply(4.0 * i, list.get(i)))
                                .toList()),
                Combinators.combine(wild(), values).as(station::apply).list().ofMaxSize(3));
    }

    private List<TaperSegment> contiguous(List<Double> tapers) {
        return IntStream.range(0, tapers.size())
                .mapToObj(i -> new TaperSegment(4 * i, 4 * (i + 1), tapers.get(i)))
                .toList();
    }

    private static Arbitrary<SectionShape> shapes() {
        return Arbitraries.of(Sections.families().stream()
                        .filter(family -> !family.takesPoints())
                        .toList())
                .map(Sections::initialShape);
    }
}
