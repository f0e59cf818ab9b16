package org.taperwright.kit.ui;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.shaping.kit.Use;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** A small invented library with a kit: a hand file, a worn rotary file, a bent one. */
final class SampleKit {
    static final ThingId HAND = new ThingId("hand-15");
    static final ThingId ROTARY = new ThingId("rotary-25");
    static final ThingId LARGE = new ThingId("rotary-40");
    static final ThingId MOTOR = new ThingId("motor");
    static final ThingId SEQUENCE = new ThingId("sequence");
    static final ThingId KIT = new ThingId("kit");
    private static final LocalDate DAY = LocalDate.of(2025, 3, 3);

    private SampleKit() {}

    static Map<ThingId, Record> things() {
        Map<ThingId, Record> things = new LinkedHashMap<>();
        things.put(HAND, instrument("K-type file 15", 15, 0.02, Drive.HAND, 0));
        things.put(ROTARY, instrument("Fen rotary 25", 25, 0.06, Drive.POWERED, 3));
        things.put(LARGE, instrument("Fen rotary 40", 40, 0.04, Drive.POWERED, 3));
        things.put(
                MOTOR,
                new Motor("Brook", "", new Window(100, 300), new Window(5, 40), Optional.empty(), true, false, ""));
        things.put(
                SEQUENCE,
                new Sequence(
                        "Fen in two steps",
                        Optional.empty(),
                        Optional.of(MOTOR),
                        List.of(step(ROTARY), step(LARGE)),
                        ""));
        things.put(
                KIT,
                new Kit(
                        "Chair 2",
                        "Molars",
                        Optional.of(MOTOR),
                        List.of(
                                piece("k15-1", HAND, "K-type file 15", 1, Optional.empty(), List.of()),
                                piece(
                                        "fen25-1",
                                        ROTARY,
                                        "Fen rotary 25",
                                        3,
                                        Optional.of(new LifeSpent(0.2, 0.45, 1.1)),
                                        List.of()),
                                piece("fen25-2", ROTARY, "Fen rotary 25", 0, Optional.empty(), List.of(Damage.BENT))),
                        ""));
        return things;
    }

    private static Instrument instrument(String name, int size, double taper, Drive drive, int uses) {
        Design design = Designs.with(Designs.standard(size, taper)).name(name).design();
        Optional<Window> speed = drive == Drive.POWERED ? Optional.of(new Window(250, 350)) : Optional.empty();
        Optional<Window> torque = drive == Drive.POWERED ? Optional.of(new Window(10, 25)) : Optional.empty();
        Instrument plain = new Instrument(
                name,
                "Marlowe",
                "Fen",
                drive == Drive.HAND ? "K-type file" : "rotary file",
                drive,
                design,
                Optional.empty(),
                false,
                speed,
                torque,
                uses,
                "");
        Supply supply =
                Supply.NONE.withSupplier("Heron Dental Supply").withStock(1).withReorderLevel(size == 15 ? 6 : 0);
        return plain.draft().supply(supply).instrument();
    }

    private static Step step(ThingId instrument) {
        return new InstrumentStep(instrument, 18, Motion.ROTATION, Optional.of(300.0), Optional.of(20.0), 3, "");
    }

    private static Piece piece(
            String id, ThingId instrument, String name, int uses, Optional<LifeSpent> each, List<Damage> seen) {
        List<Use> log = java.util.stream.IntStream.range(0, uses)
                .mapToObj(use ->
                        new Use(DAY.plusDays(use), 2, Optional.of(SEQUENCE), use == 0 ? each : Optional.empty(), ""))
                .toList();
        return new Piece(
                id,
                instrument,
                name,
                "L-1",
                Optional.of(LocalDate.of(2030, 1, 31)),
                0,
                uses,
                Optional.empty(),
                seen,
                Optional.empty(),
                log,
                "");
    }
}
