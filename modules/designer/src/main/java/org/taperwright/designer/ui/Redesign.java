package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.section.Hand;

/** A design with one thing changed. */
final class Redesign {
    private Redesign() {}

    static Design name(Design d, String name) {
        return make(d, name, d.note(), d.tipDiameterMm(), d.taper(), d.shaftDiameterMm(), d.lengthMm());
    }

    static Design note(Design d, String note) {
        return make(d, d.name(), note, d.tipDiameterMm(), d.taper(), d.shaftDiameterMm(), d.lengthMm());
    }

    static Design tipDiameter(Design d, double mm) {
        return make(d, d.name(), d.note(), mm, d.taper(), d.shaftDiameterMm(), d.lengthMm());
    }

    static Design taper(Design d, List<TaperSegment> taper) {
        return make(d, d.name(), d.note(), d.tipDiameterMm(), taper, d.shaftDiameterMm(), d.lengthMm());
    }

    static Design shaft(Design d, OptionalDouble mm) {
        return make(d, d.name(), d.note(), d.tipDiameterMm(), d.taper(), mm, d.lengthMm());
    }

    static Design length(Design d, double mm) {
        return make(d, d.name(), d.note(), d.tipDiameterMm(), d.taper(), d.shaftDiameterMm(), mm);
    }

    static Design sections(Design d, List<SectionStation> sections) {
        return make(d, sections, d.flutes(), d.hand(), d.tip(), d.alloy(), d.making(), d.motion());
    }

    static Design flutes(Design d, List<FluteStation> flutes) {
        return make(d, d.sections(), flutes, d.hand(), d.tip(), d.alloy(), d.making(), d.motion());
    }

    static Design hand(Design d, Hand hand) {
        return make(d, d.sections(), d.flutes(), hand, d.tip(), d.alloy(), d.making(), d.motion());
    }

    static Design tip(Design d, Tip tip) {
        return make(d, d.sections(), d.flutes(), d.hand(), tip, d.alloy(), d.making(), d.motion());
    }

    static Design alloy(Design d, String alloy) {
        return make(d, d.sections(), d.flutes(), d.hand(), d.tip(), alloy, d.making(), d.motion());
    }

    static Design making(Design d, Making making) {
        return make(d, d.sections(), d.flutes(), d.hand(), d.tip(), d.alloy(), making, d.motion());
    }

    static Design motion(Design d, Motion motion) {
        return make(d, d.sections(), d.flutes(), d.hand(), d.tip(), d.alloy(), d.making(), motion);
    }

    /** A list with the element at an index replaced. */
    static <T> List<T> replaced(List<T> list, int index, T element) {
        List<T> changed = new ArrayList<>(list);
        changed.set(index, element);
        return changed;
    }

    /** A list without the element at an index. */
    static <T> List<T> without(List<T> list, int index) {
        List<T> changed = new ArrayList<>(list);
        changed.remove(index);
        return changed;
    }

    private static Design make(
            Design d,
            String name,
            String note,
            double tipDiameterMm,
            List<TaperSegment> taper,
            OptionalDouble shaftDiameterMm,
            double lengthMm) {
        return new Design(
                name,
                note,
                tipDiameterMm,
                taper,
                shaftDiameterMm,
                lengthMm,
                d.sections(),
                d.flutes(),
                d.hand(),
                d.tip(),
                d.alloy(),
                d.making(),
                d.motion());
    }

    private static Design make(
            Design d,
            List<SectionStation> sections,
            List<FluteStation> flutes,
            Hand hand,
            Tip tip,
            String alloy,
            Making making,
            Motion motion) {
        return new Design(
                d.name(),
                d.note(),
                d.tipDiameterMm(),
                d.taper(),
                d.shaftDiameterMm(),
                d.lengthMm(),
                sections,
                flutes,
                hand,
                tip,
                alloy,
                making,
                motion);
    }
}
