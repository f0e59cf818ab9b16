package org.taperwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.library.store.Draft;
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
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Window;

/** A catalogue of invented instruments, as large as asked. */
final class ManyInstruments {
    private static final double[] LENGTHS_MM = {21, 25, 28, 31};

    private ManyInstruments() {}

    static List<Draft> drafts(int count) {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            drafts.add(new Draft(id(i), ThingKind.INSTRUMENT, Optional.of(instrument(i)), 0));
        }
        return drafts;
    }

    static ThingId id(int index) {
        return new ThingId("instrument-" + index);
    }

    static Instrument instrument(int index) {
        return new Instrument(
                "Reed " + index,
                "Marshlight Instruments",
                "Reed " + index % 40,
                "rotary file",
                Drive.POWERED,
                design(index),
                Optional.empty(),
                true,
                Optional.of(new Window(250, 350 + index % 5 * 50)),
                Optional.of(new Window(8, 20)),
                4,
                "Number " + index);
    }

    private static Design design(int index) {
        double taper = (2 + index % 5) / 100.0;
        SectionShape shape = new SectionShape(
                index % 2 == 0 ? "scalloped" : "triangular",
                Map.of("coreDiameter", 0.4 + index % 10 * 0.01, "flutes", 3.0),
                0.01,
                0,
                List.of());
        return new Design(
                "Reed " + index,
                "",
                (6 + index % 135) / 100.0,
                List.of(new TaperSegment(0, 4, taper), new TaperSegment(4, 16, taper * 0.8)),
                OptionalDouble.of(1.0 + index % 3 * 0.01),
                LENGTHS_MM[index % LENGTHS_MM.length],
                List.of(new SectionStation(0, shape)),
                List.of(new FluteStation(0, 1.2), new FluteStation(16, 0.75)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 60),
                index % 3 == 0 ? "stainless-steel" : "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
    }
}
