package org.taperwright.mechanics.design;

import java.util.List;
import java.util.OptionalDouble;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;

/** A design being changed: starts from another, changes some of it, ends as a new one. */
public final class DesignDraft {
    private String name;
    private String note;
    private double tipDiameterMm;
    private List<TaperSegment> taper;
    private OptionalDouble shaftDiameterMm;
    private double lengthMm;
    private List<SectionStation> sections;
    private List<FluteStation> flutes;
    private Hand hand;
    private Tip tip;
    private String alloy;
    private Making making;
    private Motion motion;

    private DesignDraft(Design design) {
        name = design.name();
        note = design.note();
        tipDiameterMm = design.tipDiameterMm();
        taper = design.taper();
        shaftDiameterMm = design.shaftDiameterMm();
        lengthMm = design.lengthMm();
        sections = design.sections();
        flutes = design.flutes();
        hand = design.hand();
        tip = design.tip();
        alloy = design.alloy();
        making = design.making();
        motion = design.motion();
    }

    /** The given design until something is changed. */
    static DesignDraft of(Design design) {
        return new DesignDraft(design);
    }

    /** Changes the name. */
    public DesignDraft name(String value) {
        name = value;
        return this;
    }

    /** Changes the note. */
    public DesignDraft note(String value) {
        note = value;
        return this;
    }

    /** Changes the diameter at the tip, mm. */
    public DesignDraft tipDiameterMm(double value) {
        tipDiameterMm = value;
        return this;
    }

    /** Changes the taper segments. */
    public DesignDraft taper(List<TaperSegment> value) {
        taper = value;
        return this;
    }

    /** Makes the taper one segment over the whole working part. */
    public DesignDraft constantTaper(double value) {
        double working = taper.isEmpty()
                ? IsoSizes.WORKING_PART_MM
                : taper.get(taper.size() - 1).toMm();
        return taper(List.of(new TaperSegment(0, working, value)));
    }

    /** Changes the shaft's diameter, mm; empty for that where the working part ends. */
    public DesignDraft shaftDiameterMm(OptionalDouble value) {
        shaftDiameterMm = value;
        return this;
    }

    /** Changes the length, mm. */
    public DesignDraft lengthMm(double value) {
        lengthMm = value;
        return this;
    }

    /** Changes the section stations. */
    public DesignDraft sections(List<SectionStation> value) {
        sections = value;
        return this;
    }

    /** Makes the section one along the whole blade. */
    public DesignDraft section(SectionShape shape) {
        return sections(List.of(new SectionStation(0, shape)));
    }

    /** Changes the flute stations. */
    public DesignDraft flutes(List<FluteStation> value) {
        flutes = value;
        return this;
    }

    /** Makes the flutes per mm one number along the whole blade. */
    public DesignDraft flutesPerMm(double value) {
        return flutes(List.of(new FluteStation(0, value)));
    }

    /** Changes the turning sense. */
    public DesignDraft hand(Hand value) {
        hand = value;
        return this;
    }

    /** Changes the tip. */
    public DesignDraft tip(Tip value) {
        tip = value;
        return this;
    }

    /** Changes the alloy. */
    public DesignDraft alloy(String id) {
        alloy = id;
        return this;
    }

    /** Changes the making. */
    public DesignDraft making(Making value) {
        making = value;
        return this;
    }

    /** Changes the motion. */
    public DesignDraft motion(Motion value) {
        motion = value;
        return this;
    }

    /** The design. */
    public Design design() {
        return new Design(
                name,
                note,
                tipDiameterMm,
                taper,
                shaftDiameterMm,
                lengthMm,
                sections,
                flutes,
                hand,
                tip,
                alloy,
                making,
                motion);
    }
}
