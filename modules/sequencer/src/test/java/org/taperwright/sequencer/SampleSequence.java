package org.taperwright.sequencer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;

/** An invented sequence of three steps in a bent canal, with what it needs and one instrument more. */
public final class SampleSequence {
    public static final ThingId SEQUENCE = new ThingId("sequence");
    public static final ThingId CANAL = new ThingId("canal");
    public static final ThingId MOTOR = new ThingId("motor");
    public static final ThingId HAND = new ThingId("hand-10");
    public static final ThingId NARROW = new ThingId("rotary-20");
    public static final ThingId WIDE = new ThingId("rotary-25");
    public static final ThingId EXTRA = new ThingId("rotary-30");

    private SampleSequence() {}

    public static Map<ThingId, Record> things() {
        Map<ThingId, Record> things = new LinkedHashMap<>();
        things.put(HAND, instrument("Ditch hand 10", 10, 0.02, Drive.HAND));
        things.put(NARROW, instrument("Fen rotary 20", 20, 0.04, Drive.POWERED));
        things.put(WIDE, instrument("Fen rotary 25", 25, 0.06, Drive.POWERED));
        things.put(EXTRA, instrument("Fen rotary 30", 30, 0.04, Drive.POWERED));
        things.put(CANAL, canal());
        things.put(
                MOTOR,
                new Motor(
                        "Quillon",
                        "Marlowe",
                        new Window(150, 600),
                        new Window(2, 40),
                        Optional.empty(),
                        true,
                        false,
                        ""));
        things.put(
                SEQUENCE,
                new Sequence(
                        "Three steps",
                        Optional.of(CANAL),
                        Optional.of(MOTOR),
                        List.of(byHand(HAND), powered(NARROW), powered(WIDE)),
                        ""));
        return things;
    }

    /** 12 mm from the orifice to its end, 6 mm below the reference point. */
    public static Canal canal() {
        return new Canal(
                "Bent",
                List.of(new CanalPiece(6, 0, 0), new CanalPiece(6, 30, 0)),
                List.of(new Opening(0, 0.8, 0.6, 0), new Opening(12, 0.2, 0.15, 0)),
                List.of(),
                6,
                17.5,
                "invented",
                "");
    }

    public static InstrumentStep byHand(ThingId instrument) {
        return new InstrumentStep(instrument, 17.5, Motion.FILING, Optional.empty(), Optional.empty(), 2, "");
    }

    public static InstrumentStep powered(ThingId instrument) {
        return new InstrumentStep(instrument, 17.5, Motion.ROTATION, Optional.of(300.0), Optional.of(20.0), 2, "");
    }

    private static Instrument instrument(String name, int size, double taper, Drive drive) {
        boolean hand = drive == Drive.HAND;
        Design design = new Design(
                name,
                "",
                size / 100.0,
                List.of(new TaperSegment(0, 16, taper)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of("triangle", Map.of()))),
                List.of(new FluteStation(0, 1)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                hand ? "stainless-steel" : "niti-superelastic",
                Making.GROUND,
                hand ? Motion.FILING : Motion.ROTATION);
        return new Instrument(
                name,
                "Marlowe",
                "Fen",
                hand ? "K-type file" : "rotary file",
                drive,
                design,
                Optional.empty(),
                false,
                hand ? Optional.empty() : Optional.of(new Window(250, 350)),
                hand ? Optional.empty() : Optional.of(new Window(10, 25)),
                0,
                "");
    }
}
