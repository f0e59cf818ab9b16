package org.taperwright.library.exchange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.time.api.Dates;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.SetAngles;
import org.taperwright.shaping.sequence.Step;

/** Things of every kind within the limits of their forms, sensible or not. */
public final class ArbitraryThings {
    private ArbitraryThings() {}

    static Arbitrary<Record> any() {
        return Arbitraries.oneOf(
                design().map(Record.class::cast),
                instrument().map(Record.class::cast),
                motor().map(Record.class::cast),
                canal().map(Record.class::cast),
                sequence().map(Record.class::cast),
                ArbitraryKits.kit().map(Record.class::cast),
                comparison().map(Record.class::cast),
                filter().map(Record.class::cast),
                ArbitraryAlloys.alloy().map(Record.class::cast));
    }

    static Arbitrary<ThingId> id() {
        Arbitrary<String> rest = Arbitraries.strings()
                .withCharRange('a', 'z')
                .withCharRange('A', 'Z')
                .numeric()
                .withChars('.', '-')
                .ofMaxLength(79);
        return Combinators.combine(Arbitraries.strings().alpha().ofLength(1), rest)
                .as((first, others) -> new ThingId(first + others));
    }

    private static Arbitrary<SavedFilter> filter() {
        Arbitrary<Window> range = Combinators.combine(
                        Arbitraries.doubles().between(0, 5),
                        Arbitraries.doubles().between(5, 10))
                .as(Window::new);
        Arbitrary<InstrumentFilter> filter = Combinators.combine(
                        range.optional(),
                        range.optional(),
                        range.optional(),
                        Arbitraries.of("square", "triangular").list().ofMaxSize(3),
                        Arbitraries.of(Motion.values()).list().uniqueElements(),
                        Arbitraries.of(true, false),
                        id().optional())
                .as((size, taper, length, families, motions, inStock, motor) ->
                        new InstrumentFilter("", size, taper, length, families, List.of(), motions, inStock, motor));
        return Combinators.combine(text(1, 60), filter, text(0, 60)).as(SavedFilter::new);
    }

    static Arbitrary<String> text(int least, int most) {
        return Arbitraries.strings()
                .withChars('a', 'Z', '"', '\\', '/', ' ', '\n', '\t', 'é', '中', '<', '\u2028', '\'', '\uFEFF')
                .ofMinLength(least)
                .ofMaxLength(most);
    }

    static Arbitrary<Double> number(double least, double most) {
        Arbitrary<Double> rough = Arbitraries.doubles().between(least, most).ofScale(3);
        Arbitrary<Double> exact =
                Arbitraries.longs().map(Double::longBitsToDouble).filter(value -> value >= least && value <= most);
        return Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(4, rough),
                net.jqwik.api.Tuple.of(1, exact),
                net.jqwik.api.Tuple.of(1, Arbitraries.of(least, most, 0.1 + 0.2, Double.MIN_VALUE)));
    }

    private static Arbitrary<SectionShape> shape() {
        Arbitrary<Point> point =
                Combinators.combine(number(-1e6, 1e6), number(-1e6, 1e6)).as(Point::new);
        return Combinators.combine(
                        Arbitraries.of("square", "custom", "anything-else"),
                        Arbitraries.maps(
                                        Arbitraries.strings()
                                                .alpha()
                                                .ofMinLength(1)
                                                .ofMaxLength(9),
                                        number(-1e6, 1e6))
                                .ofMaxSize(4),
                        number(0, 1),
                        number(0, 1),
                        point.list().ofMaxSize(5))
                .as(SectionShape::new);
    }

    static Arbitrary<Design> design() {
        Arbitrary<Double> level = number(0, 200);
        return Combinators.combine(
                        text(1, 20),
                        number(0, 20),
                        Combinators.combine(level, level, number(-10, 10))
                                .as(TaperSegment::new)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(4),
                        number(0, 20).optional(),
                        Combinators.combine(level, shape())
                                .as(SectionStation::new)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(3),
                        Combinators.combine(level, number(0, 100))
                                .as(FluteStation::new)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(3),
                        Arbitraries.of(Hand.values()),
                        Combinators.combine(Arbitraries.of(TipKind.values()), number(0, 360))
                                .as(Tip::new))
                .flatAs((name, d0, taper, shaft, sections, flutes, hand, tip) -> Combinators.combine(
                                text(0, 20), level, Arbitraries.of(Making.values()), Arbitraries.of(Motion.values()))
                        .as((note, length, making, motion) -> new Design(
                                name,
                                note,
                                d0,
                                taper,
                                shaft.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                                length,
                                sections,
                                flutes,
                                hand,
                                tip,
                                "some-alloy",
                                making,
                                motion)));
    }

    private static Arbitrary<Window> window(double most) {
        return Combinators.combine(number(0, most), number(0, most))
                .as((one, other) -> new Window(Math.min(one, other), Math.max(one, other)));
    }

    /** Instruments. */
    public static Arbitrary<Instrument> instrument() {
        Arbitrary<Instrument> plain = Combinators.combine(
                        text(1, 9),
                        text(0, 9),
                        Arbitraries.of(Drive.values()),
                        design(),
                        id().optional(),
                        Arbitraries.of(true, false),
                        window(1e6).optional(),
                        Arbitraries.integers().between(0, 1_000_000))
                .as((name, words, drive, design, designId, assumed, window, uses) -> new Instrument(
                        name,
                        words,
                        words,
                        words,
                        drive,
                        design,
                        designId,
                        assumed,
                        window,
                        window.map(each -> new Window(each.least() / 20, each.most() / 20)),
                        uses,
                        words));
        return Combinators.combine(
                        plain,
                        supply(),
                        reciprocation().optional(),
                        ArbitraryPictures.any().optional())
                .as((instrument, supply, angles, picture) -> instrument
                        .draft()
                        .supply(supply)
                        .reciprocation(angles)
                        .picture(picture)
                        .instrument());
    }

    private static Arbitrary<Supply> supply() {
        Arbitrary<Price> price = Combinators.combine(
                        Arbitraries.bigDecimals()
                                .between(BigDecimal.ZERO, BigDecimal.valueOf(Price.MOST))
                                .ofScale(4),
                        Arbitraries.strings().withCharRange('A', 'Z').ofLength(3))
                .as(Price::new);
        Arbitrary<Integer> count = Arbitraries.integers().between(0, Supply.MOST);
        return Combinators.combine(text(0, 9), text(0, 9), day().optional(), price.optional(), count, count)
                .as(Supply::new);
    }

    static Arbitrary<LocalDate> day() {
        return Dates.dates().between(LocalDate.of(1, 1, 1), LocalDate.of(9999, 12, 31));
    }

    private static Arbitrary<Reciprocation> reciprocation() {
        return Combinators.combine(window(3600), window(3600)).as(Reciprocation::new);
    }

    /** Motors. */
    public static Arbitrary<Motor> motor() {
        return Combinators.combine(
                        text(1, 9),
                        text(0, 9),
                        window(1e6),
                        window(1e5),
                        reciprocation().optional(),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        text(0, 9))
                .as(Motor::new);
    }

    private static Arbitrary<Canal> canal() {
        Arbitrary<Double> depth = number(0, 200);
        Arbitrary<Double> diameter = number(0, 50);
        Arbitrary<Double> angle = number(-720, 720);
        return Combinators.combine(
                        text(1, 9),
                        Combinators.combine(depth, angle, angle)
                                .as(CanalPiece::new)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(3),
                        Combinators.combine(depth, diameter, diameter, angle)
                                .as(Opening::new)
                                .list()
                                .ofMinSize(2)
                                .ofMaxSize(3),
                        Combinators.combine(depth, diameter, diameter, angle)
                                .as(RootOutline::new)
                                .list()
                                .ofMaxSize(2),
                        depth,
                        depth,
                        text(0, 9),
                        text(0, 9))
                .as(Canal::new);
    }

    private static Arbitrary<Sequence> sequence() {
        Arbitrary<Step> work = Combinators.combine(
                        id(),
                        number(0, 200),
                        Arbitraries.of(Motion.values()),
                        number(0, 1e6).optional(),
                        number(0, 1e5).optional(),
                        Combinators.combine(number(0, 3600), number(0, 3600))
                                .as(SetAngles::new)
                                .optional(),
                        Arbitraries.integers().between(0, 1_000_000),
                        text(0, 9))
                .as(InstrumentStep::new);
        Arbitrary<Step> rinse = Combinators.combine(
                        Arbitraries.of(NeedleGauge.values()), number(0, 200), number(0, 1000), text(1, 9), text(0, 9))
                .as(Irrigation::new);
        Arbitrary<Step> open =
                Combinators.combine(id(), number(0, 10), text(0, 9)).as(Patency::new);
        Arbitrary<Step> back = Combinators.combine(id(), Arbitraries.integers().between(0, 1_000_000), text(0, 9))
                .as(Recapitulation::new);
        Arbitrary<Step> step = Arbitraries.oneOf(work, rinse, open, back);
        return Combinators.combine(
                        text(1, 9),
                        id().optional(),
                        id().optional(),
                        step.list().ofMaxSize(4),
                        text(0, 9))
                .as(Sequence::new);
    }

    private static Arbitrary<SavedComparison> comparison() {
        Arbitrary<List<ThingId>> designs = id().list().ofMaxSize(6);
        return Combinators.combine(
                        text(1, 9),
                        designs,
                        id(),
                        ArbitraryComparisons.weights(),
                        ArbitraryComparisons.rows(),
                        ArbitraryComparisons.kept().optional(),
                        ArbitraryComparisons.measured().list().ofMaxSize(2),
                        text(0, 9))
                .as(SavedComparison::new);
    }
}
