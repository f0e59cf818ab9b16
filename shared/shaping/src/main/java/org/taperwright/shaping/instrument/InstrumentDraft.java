package org.taperwright.shaping.instrument;

import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;

/** A catalogue entry being changed: starts from another, changes some of it, ends as a new one. */
public final class InstrumentDraft {
    private String name;
    private String maker;
    private String line;
    private String type;
    private Drive drive;
    private Design design;
    private Optional<ThingId> designId;
    private boolean designAssumed;
    private Optional<Window> speedRpm;
    private Optional<Window> torqueNmm;
    private Optional<Reciprocation> reciprocation;
    private int usesAllowed;
    private Supply supply;
    private Optional<Picture> picture;
    private String note;

    InstrumentDraft(Instrument from) {
        name = from.name();
        maker = from.maker();
        line = from.line();
        type = from.type();
        drive = from.drive();
        design = from.design();
        designId = from.designId();
        designAssumed = from.designAssumed();
        speedRpm = from.speedRpm();
        torqueNmm = from.torqueNmm();
        reciprocation = from.reciprocation();
        usesAllowed = from.usesAllowed();
        supply = from.supply();
        picture = from.picture();
        note = from.note();
    }

    /** Changes the designation for people. */
    public InstrumentDraft name(String value) {
        name = value;
        return this;
    }

    /** Changes the maker. */
    public InstrumentDraft maker(String value) {
        maker = value;
        return this;
    }

    /** Changes the maker's line. */
    public InstrumentDraft line(String value) {
        line = value;
        return this;
    }

    /** Changes the trade's type. */
    public InstrumentDraft type(String value) {
        type = value;
        return this;
    }

    /** Changes how it is held. */
    public InstrumentDraft drive(Drive value) {
        drive = value;
        return this;
    }

    /** Changes the geometry and material. */
    public InstrumentDraft design(Design value) {
        design = value;
        return this;
    }

    /** Changes the library design it was taken from. */
    public InstrumentDraft designId(Optional<ThingId> value) {
        designId = value;
        return this;
    }

    /** Changes whether the design is assumed by type. */
    public InstrumentDraft designAssumed(boolean value) {
        designAssumed = value;
        return this;
    }

    /** Changes the speed window, rev/min. */
    public InstrumentDraft speedRpm(Optional<Window> value) {
        speedRpm = value;
        return this;
    }

    /** Changes the torque window, N mm. */
    public InstrumentDraft torqueNmm(Optional<Window> value) {
        torqueNmm = value;
        return this;
    }

    /** Changes the angles allowed. */
    public InstrumentDraft reciprocation(Optional<Reciprocation> value) {
        reciprocation = value;
        return this;
    }

    /** Changes the uses allowed, 0 when not stated. */
    public InstrumentDraft usesAllowed(int value) {
        usesAllowed = value;
        return this;
    }

    /** Changes the supply. */
    public InstrumentDraft supply(Supply value) {
        supply = value;
        return this;
    }

    /** Changes the picture. */
    public InstrumentDraft picture(Optional<Picture> value) {
        picture = value;
        return this;
    }

    /** Changes the note. */
    public InstrumentDraft note(String value) {
        note = value;
        return this;
    }

    /** The entry as changed. */
    public Instrument instrument() {
        return new Instrument(
                name,
                maker,
                line,
                type,
                drive,
                design,
                designId,
                designAssumed,
                speedRpm,
                torqueNmm,
                reciprocation,
                usesAllowed,
                supply,
                picture,
                note);
    }
}
