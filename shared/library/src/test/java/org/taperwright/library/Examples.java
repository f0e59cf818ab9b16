package org.taperwright.library;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
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
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** Invented things, one of each kind, that use every field of their form and refer to each other. */
public final class Examples {
    public static final ThingId DESIGN_ID = new ThingId("example-design");
    public static final ThingId INSTRUMENT_ID = new ThingId("example-instrument");
    public static final ThingId MOTOR_ID = new ThingId("example-motor");
    public static final ThingId CANAL_ID = new ThingId("example-canal");
    public static final ThingId SEQUENCE_ID = new ThingId("example-sequence");
    public static final ThingId COMPARISON_ID = new ThingId("example-comparison");

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
                new LibraryBundle.Item(COMPARISON_ID, comparison())));
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

    public static Instrument instrument() {
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

    public static Motor motor() {
        return new Motor(
                "Tern bench motor",
                "Marshlight Instruments",
                new Window(100, 1000),
                new Window(2, 50),
                Optional.of(new Motor.Reciprocation(new Window(10, 370), new Window(10, 370))),
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
                "Two steps",
                Optional.of(CANAL_ID),
                Optional.of(MOTOR_ID),
                List.of(
                        new Step(INSTRUMENT_ID, 12, Motion.ROTATION, Optional.of(300.0), Optional.of(12.5), 3, "Pass."),
                        new Step(INSTRUMENT_ID, 18.5, Motion.FILING, Optional.empty(), Optional.empty(), 5, "")),
                "Invented.");
    }

    public static SavedComparison comparison() {
        return new SavedComparison("Heron by itself", List.of(DESIGN_ID), DESIGN_ID, "Invented.");
    }
}
