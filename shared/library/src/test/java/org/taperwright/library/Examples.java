package org.taperwright.library;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.library.store.MetricRows;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.measured.FitAccount;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.mechanics.measured.MeasuredLives;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
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
import org.taperwright.shaping.instrument.Picture;
import org.taperwright.shaping.instrument.PictureResult;
import org.taperwright.shaping.instrument.Pictures;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.Discarding;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.Use;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.SetAngles;

/** Invented things, one of each kind, that use every field of their form and refer to each other. */
public final class Examples {
    public static final ThingId DESIGN_ID = new ThingId("example-design");
    public static final ThingId INSTRUMENT_ID = new ThingId("example-instrument");
    public static final ThingId MOTOR_ID = new ThingId("example-motor");
    public static final ThingId CANAL_ID = new ThingId("example-canal");
    public static final ThingId SEQUENCE_ID = new ThingId("example-sequence");
    public static final ThingId KIT_ID = new ThingId("example-kit");
    public static final ThingId COMPARISON_ID = new ThingId("example-comparison");

    public static final ThingId FILTER_ID = new ThingId("example-filter");

    public static final ThingId ALLOY_ID = new ThingId("example-alloy");

    private Examples() {}

    /** One thing of each kind. */
    public static Map<ThingKind, LibraryBundle.Item> all() {
        Map<ThingKind, LibraryBundle.Item> all = new LinkedHashMap<>();
        for (LibraryBundle.Item item : bundle().items()) {
            all.put(ThingKind.of(item.thing()), item);
        }
        return all;
    }

    public static LibraryBundle bundle() {
        return new LibraryBundle(List.of(
                new LibraryBundle.Item(DESIGN_ID, design()),
                new LibraryBundle.Item(INSTRUMENT_ID, instrument()),
                new LibraryBundle.Item(MOTOR_ID, motor()),
                new LibraryBundle.Item(CANAL_ID, canal()),
                new LibraryBundle.Item(SEQUENCE_ID, sequence()),
                new LibraryBundle.Item(KIT_ID, kit()),
                new LibraryBundle.Item(COMPARISON_ID, comparison()),
                new LibraryBundle.Item(FILTER_ID, filter()),
                new LibraryBundle.Item(ALLOY_ID, alloy())));
    }

    public static Design design() {
        SectionShape scalloped = new SectionShape(
                "scalloped", Map.of("flutes", 3.0, "coreDiameter", 0.45, "landAngleDeg", 12.0), 0.01, 0, List.of());
        SectionShape custom = new SectionShape(
                "custom", Map.of(), 0, 0.02, List.of(new Point(0.5, 0), new Point(-0.25, 0.4), new Point(-0.25, -0.4)));
        return new Design(
                "Heron 25/.06",
                "Two sections, falling taper.\nInvented.",
                0.25,
                List.of(new TaperSegment(0, 4, 0.06), new TaperSegment(4, 16, 0.035)),
                OptionalDouble.of(1.02),
                25,
                List.of(new SectionStation(0, scalloped), new SectionStation(16, custom)),
                List.of(new FluteStation(0, 1.2), new FluteStation(16, 0.75)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 60),
                "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
    }

    /** An alloy of the library's own with an account of its fit; invented. */
    public static OwnAlloy alloy() {
        Map<String, Reading> constants = new TreeMap<>();
        constants.put("youngMpa", about(47_000, 45_000, 49_000));
        constants.put("yieldMpa", about(505, 480, 530));
        constants.put("plateauEndStrain", about(0.055, 0.045, 0.065));
        constants.put("plateauMpa", about(1_500, 500, 3_200));
        constants.put("martensiteMpa", about(20_000, 12_800, 27_800));
        constants.put("martensiteYieldMpa", about(1_170, 1_000, 1_300));
        constants.put("asymmetry", Reading.of(1.3));
        constants.put("shearStrengthMpa", about(866, 817, 920));
        constants.put("fractureShearStrain", about(0.38, 0.29, 0.48));
        constants.put("lifePower", about(2.6, 2.5, 2.7));
        FitAccount fit = new FitAccount(
                "Heron 25/.06",
                LocalDate.of(2027, 3, 31),
                List.of(
                        new FitAccount.Constant("youngMpa", 42_500, 47_000, 1_216, false),
                        new FitAccount.Constant("lifePower", 2.75, 2.6, 0, true)),
                List.of(List.of(1_478_656.0, 0.0), List.of(0.0, 0.0)),
                List.of(
                        new FitAccount.Residual("Bench of spring", 15, 3, 0.012),
                        new FitAccount.Residual("Tubes", 24, 0, 0.31)),
                OptionalDouble.of(0.013),
                OptionalDouble.of(0.32));
        return new OwnAlloy(
                "Heron wire, spring lot",
                "niti-superelastic",
                0.33,
                1_500,
                constants,
                Optional.of(fit),
                "Young's modulus: fitted to Bench of spring. Invented.",
                "Loading at 23 °C.",
                "A note.");
    }

    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }

    public static Design plainDesign(String name) {
        return new Design(
                name,
                "",
                0.25,
                List.of(new TaperSegment(0, 16, 0.02)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of("square", Map.of()))),
                List.of(new FluteStation(0, 1.5)),
                Hand.CLOCKWISE,
                new Tip(TipKind.ACTIVE, 75),
                "stainless-steel",
                Making.TWISTED,
                Motion.REAMING);
    }

    /** An instrument with all that the first version of its form knew. */
    public static Instrument instrumentOfOld() {
        return new Instrument(
                "Heron 25/.06",
                "Marshlight Instruments",
                "Heron",
                "rotary file",
                Drive.POWERED,
                design(),
                Optional.of(DESIGN_ID),
                true,
                Optional.of(new Window(250, 350)),
                Optional.of(new Window(8, 20)),
                4,
                "Invented.");
    }

    public static Instrument instrument() {
        return instrumentOfOld()
                .draft()
                .reciprocation(Optional.of(new Reciprocation(new Window(150, 170), new Window(30, 50))))
                .supply(new Supply(
                        "Quayside Dental Stores",
                        "L2204",
                        Optional.of(LocalDate.of(2028, 2, 29)),
                        Optional.of(new Price(new BigDecimal("12.50"), "EUR")),
                        18,
                        6))
                .picture(Optional.of(picture()))
                .instrument();
    }

    /** Two pixels, red and light grey. */
    public static Picture picture() {
        String png =
                "iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAAD0lEQVR42mM4" + "ISf34cMHAAtlA9XTb6bjAAAAAElFTkSuQmCC";
        if (Pictures.ofBase64(png, "picture") instanceof PictureResult.Taken taken) {
            return taken.picture();
        }
        throw new AssertionError("the example's picture is none");
    }

    public static Motor motor() {
        return new Motor(
                "Tern bench motor",
                "Marshlight Instruments",
                new Window(100, 1000),
                new Window(2, 50),
                Optional.of(new Reciprocation(new Window(10, 370), new Window(10, 370))),
                true,
                true,
                "Invented.");
    }

    public static Canal canal() {
        return new Canal(
                "Curved mesial canal",
                List.of(new CanalPiece(6, 0, 0), new CanalPiece(5.5, 32, 90)),
                List.of(new Opening(0, 0.9, 0.5, 15), new Opening(11.5, 0.25, 0.2, 0)),
                List.of(new RootOutline(0, 5.5, 3.2, 0), new RootOutline(11.5, 2.4, 1.8, 10)),
                7.5,
                18.5,
                "invented, within common ranges",
                "Invented.");
    }

    public static Sequence sequence() {
        return new Sequence(
                "Steps of every kind",
                Optional.of(CANAL_ID),
                Optional.of(MOTOR_ID),
                List.of(
                        new InstrumentStep(
                                INSTRUMENT_ID,
                                12,
                                Motion.RECIPROCATION,
                                Optional.of(300.0),
                                Optional.of(12.5),
                                Optional.of(new SetAngles(150, 30)),
                                3,
                                "Pass."),
                        new Irrigation(NeedleGauge.G30, 16.5, 2, "sodium hypochlorite 2.5 %", "Slowly."),
                        new Patency(INSTRUMENT_ID, 0.5, "Once."),
                        new Recapitulation(INSTRUMENT_ID, 2, "Gently."),
                        new InstrumentStep(
                                INSTRUMENT_ID, 18.5, Motion.FILING, Optional.empty(), Optional.empty(), 5, "")),
                "Invented.");
    }

    /** As the first version of the form could say it. */
    public static Sequence sequenceOfOld() {
        return new Sequence(
                "Two steps",
                Optional.of(CANAL_ID),
                Optional.of(MOTOR_ID),
                List.of(
                        new InstrumentStep(
                                INSTRUMENT_ID, 12, Motion.ROTATION, Optional.of(300.0), Optional.of(12.5), 3, "Pass."),
                        new InstrumentStep(
                                INSTRUMENT_ID, 18.5, Motion.FILING, Optional.empty(), Optional.empty(), 5, "")),
                "Invented.");
    }

    public static Kit kit() {
        Use first = new Use(
                LocalDate.of(2026, 3, 2),
                2,
                Optional.of(SEQUENCE_ID),
                Optional.of(new LifeSpent(0.02, 0.05, 0.125)),
                "Resin block.");
        Use second = new Use(LocalDate.of(2026, 3, 9), 1, Optional.empty(), Optional.empty(), "");
        Piece used = new Piece(
                "heron-1",
                INSTRUMENT_ID,
                "Heron 25/.06",
                "L2204",
                Optional.of(LocalDate.of(2028, 2, 29)),
                1,
                3,
                Optional.of(new LifeSpent(0.01, 0.04, 0.1)),
                List.of(Damage.UNWOUND, Damage.BROKEN_FLUTE),
                Optional.of(new Discarding(LocalDate.of(2026, 3, 9), "unwound", true)),
                List.of(first, second),
                "Invented.");
        Piece fresh = new Piece(
                "heron-2",
                INSTRUMENT_ID,
                "Heron 25/.06",
                "",
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of(),
                "");
        return new Kit("Bench kit", "For curved canals.", Optional.of(MOTOR_ID), List.of(used, fresh), "Invented.");
    }

    public static SavedFilter filter() {
        return new SavedFilter(
                "In the drawer for the bench motor",
                new InstrumentFilter(
                        "marshlight heron",
                        Optional.of(new Window(15, 40)),
                        Optional.of(new Window(0.04, 0.06)),
                        Optional.of(new Window(21, 25)),
                        List.of("scalloped"),
                        List.of("niti-superelastic"),
                        List.of(Motion.ROTATION, Motion.RECIPROCATION),
                        true,
                        Optional.of(MOTOR_ID)),
                "Invented.");
    }

    public static SavedComparison comparison() {
        return comparisonOfTheSecondVersion()
                .measuring(List.of(
                        new MeasuredOn(
                                DESIGN_ID,
                                new MeasuredCurve(
                                        BenchCurve.BENDING,
                                        "bench.csv",
                                        List.of(new CurvePoint(10, 3.1), new CurvePoint(45, 9.9)))),
                        new MeasuredOn(
                                DESIGN_ID,
                                new MeasuredLives(
                                        "tubes.csv", List.of(new MeasuredLives.Life(new Tube(60, 5, 5, 0.1), 412))))));
    }

    /** As version 2 of the form had it. */
    public static SavedComparison comparisonOfTheSecondVersion() {
        return comparisonOfOld()
                .weighed(new Weights(Map.of("flexibility", 2.0, "cutting", 1.5)))
                .showing(new MetricRows(List.of("cutting", "flexibility"), List.of("helix-angle")))
                .keeping(new KeptResults(
                        "1",
                        List.of(new KeptResults.KeptDesign(DESIGN_ID, "0123456789abcdef")),
                        List.of(new KeptResults.KeptRow("flexibility", List.of(0.25)))));
    }

    /** As version 1 of the form had it. */
    public static SavedComparison comparisonOfOld() {
        return new SavedComparison("Heron by itself", List.of(DESIGN_ID), DESIGN_ID, "Invented.");
    }

    /** A library that holds these things. */
    public static Snapshot snapshotOf(Map<ThingId, Record> things) {
        Map<ThingId, Entry> entries = new LinkedHashMap<>();
        things.forEach(
                (id, thing) -> entries.put(id, new Entry(id, thing, entries.size() + 1, Instant.EPOCH, "Example")));
        return new Snapshot(entries.size(), entries);
    }
}
