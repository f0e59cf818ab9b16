package org.taperwright.comparer.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/** Invented designs and a comparison of them. */
final class SampleDesigns {
    static final ThingId STEEL = new ThingId("steel-square");
    static final ThingId NITI = new ThingId("niti-square");
    static final ThingId TRIANGLE = new ThingId("niti-triangle");
    static final ThingId EXTRA = new ThingId("extra");
    static final ThingId COMPARISON = new ThingId("three");

    private SampleDesigns() {}

    /** Three designs compared, the steel one as the datum, and one more design. */
    static Map<ThingId, Record> library() {
        Map<ThingId, Record> things = new LinkedHashMap<>();
        things.put(STEEL, design("Marsh steel square", "square", "stainless-steel", 0.04));
        things.put(NITI, design("Marsh superelastic square", "square", "niti-superelastic", 0.04));
        things.put(TRIANGLE, design("Fen superelastic triangle", "triangle", "niti-superelastic", 0.06));
        things.put(EXTRA, design("Fen triangle of steel", "triangle", "stainless-steel", 0.02));
        things.put(
                COMPARISON, new SavedComparison("Squares and a triangle", List.of(STEEL, NITI, TRIANGLE), STEEL, ""));
        return things;
    }

    static Design design(String name, String family, String alloy, double taper) {
        return new Design(
                name,
                "",
                0.25,
                List.of(new TaperSegment(0, 16, taper)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of(family, Map.of()))),
                List.of(new FluteStation(0, 1)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                alloy,
                Making.GROUND,
                Motion.ROTATION);
    }
}
