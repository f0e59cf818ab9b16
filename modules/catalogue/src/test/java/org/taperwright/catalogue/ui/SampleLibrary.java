package org.taperwright.catalogue.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.library.store.SavedComparison;
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
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Window;

/** A small invented library. */
public final class SampleLibrary {
    public static final ThingId DESIGN = new ThingId("design");
    public static final ThingId HAND_8 = new ThingId("hand-8");
    public static final ThingId HAND_25 = new ThingId("hand-25");
    public static final ThingId ROTARY = new ThingId("rotary-25");
    public static final ThingId COMPARISON = new ThingId("comparison");

    private SampleLibrary() {}

    public static Map<ThingId, Record> things() {
        Map<ThingId, Record> things = new LinkedHashMap<>();
        things.put(DESIGN, design("Fen square 25/.02", 25, 0.02, "square", Motion.FILING));
        things.put(HAND_25, hand(25));
        things.put(HAND_8, hand(8));
        things.put(
                ROTARY,
                new Instrument(
                        "Fen rotary 25",
                        "Marlowe",
                        "Fen",
                        "rotary file",
                        Drive.POWERED,
                        design("Fen rotary 25", 25, 0.06, "triangle", Motion.ROTATION),
                        Optional.of(DESIGN),
                        false,
                        Optional.of(new Window(250, 400)),
                        Optional.of(new Window(10, 25)),
                        6,
                        ""));
        things.put(COMPARISON, new SavedComparison("One against itself", List.of(DESIGN, DESIGN), DESIGN, ""));
        return things;
    }

    public static Instrument hand(int size) {
        String name = "K-type file " + size;
        return new Instrument(
                name,
                "Marlowe",
                "Ditch",
                "K-type file",
                Drive.HAND,
                design(name, size, 0.02, "square", Motion.FILING),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                0,
                "");
    }

    public static Design design(String name, int size, double taper, String family, Motion motion) {
        return new Design(
                name,
                "",
                size / 100.0,
                List.of(new TaperSegment(0, 16, taper)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of(family, Map.of()))),
                List.of(new FluteStation(0, 1.4)),
                Hand.CLOCKWISE,
                new Tip(TipKind.ACTIVE, 75),
                motion == Motion.FILING ? "stainless-steel" : "niti-superelastic",
                Making.GROUND,
                motion);
    }
}
