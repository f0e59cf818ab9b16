package org.taperwright.mechanics.bench;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;

/** Designs for tests of the bench. */
public final class BenchDesigns {
    private BenchDesigns() {}

    /** A working part of 16 mm of one taper and one family with its initial parameters, 25 mm long. */
    public static Design of(String family, double tipDiameterMm, double taper) {
        return of(family, tipDiameterMm, List.of(new TaperSegment(0, 16, taper)), Motion.FILING);
    }

    public static Design of(String family, double tipDiameterMm, List<TaperSegment> taper, Motion motion) {
        return new Design(
                "bench",
                "",
                tipDiameterMm,
                taper,
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of(family, Map.of()))),
                List.of(new FluteStation(0, 1)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, 75),
                "stainless-steel",
                Making.GROUND,
                motion);
    }

    /** The same design of another alloy. */
    public static Design inAlloy(Design design, String alloy) {
        return new Design(
                design.name(),
                design.note(),
                design.tipDiameterMm(),
                design.taper(),
                design.shaftDiameterMm(),
                design.lengthMm(),
                design.sections(),
                design.flutes(),
                design.hand(),
                design.tip(),
                alloy,
                design.making(),
                design.motion());
    }
}
