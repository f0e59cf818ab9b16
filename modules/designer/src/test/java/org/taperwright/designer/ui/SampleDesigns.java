package org.taperwright.designer.ui;

import java.util.List;
import java.util.Map;
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

/** Invented designs for the panel's tests. */
final class SampleDesigns {
    static final ThingId FILE = new ThingId("square-file");
    static final ThingId ROTARY = new ThingId("falling-rotary");

    private SampleDesigns() {}

    /** A square steel file of the standard's taper, which has limits in the standard's tables. */
    static Design file() {
        return new Design(
                "Square file 25",
                "",
                0.25,
                List.of(new TaperSegment(0, 16, 0.02)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of("square", Map.of()))),
                List.of(new FluteStation(0, 2.4), new FluteStation(16, 1.2)),
                Hand.CLOCKWISE,
                new Tip(TipKind.ACTIVE, 75),
                "stainless-steel",
                Making.TWISTED,
                Motion.FILING);
    }

    /** A superelastic rotary blade of falling taper. */
    static Design rotary() {
        return new Design(
                "Falling taper 25",
                "For comparing constant and falling taper",
                0.25,
                List.of(new TaperSegment(0, 3, 0.08), new TaperSegment(3, 8, 0.05), new TaperSegment(8, 16, 0.03)),
                OptionalDouble.of(1.1),
                25,
                List.of(new SectionStation(0, SectionShape.of("triangle", Map.of("sagitta", 0.03)))),
                List.of(new FluteStation(0, 1.1), new FluteStation(16, 0.6)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 60),
                "niti-superelastic",
                Making.GROUND,
                Motion.ROTATION);
    }

    static Map<ThingId, Design> library() {
        return Map.of(FILE, file(), ROTARY, rotary());
    }
}
