package org.taperwright.shaping.instrument;

import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;

/**
 * A catalogue entry.
 *
 * @param name designation for people
 * @param maker who makes it
 * @param line the maker's line
 * @param type the trade's type, such as "K-type file" or "rotary file"
 * @param drive hand or powered
 * @param design the geometry and material: its own copy, so that an entry stands by itself
 * @param designId the library design it was taken from, if any
 * @param designAssumed whether the design was assumed by type rather than known
 * @param speedRpm speed window, rev/min, powered only
 * @param torqueNmm torque window, N mm, powered only
 * @param reciprocation angles the maker allows, reciprocating only
 * @param usesAllowed how many uses the maker allows, 0 when not stated
 * @param supply where it comes from and how many are in stock
 * @param picture what it looks like
 * @param note free text
 */
public record Instrument(
        String name,
        String maker,
        String line,
        String type,
        Drive drive,
        Design design,
        Optional<ThingId> designId,
        boolean designAssumed,
        Optional<Window> speedRpm,
        Optional<Window> torqueNmm,
        Optional<Reciprocation> reciprocation,
        int usesAllowed,
        Supply supply,
        Optional<Picture> picture,
        String note) {

    /** An entry without angles, supply or picture. */
    public Instrument(
            String name,
            String maker,
            String line,
            String type,
            Drive drive,
            Design design,
            Optional<ThingId> designId,
            boolean designAssumed,
            Optional<Window> speedRpm,
            Optional<Window> torqueNmm,
            int usesAllowed,
            String note) {
        this(
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
                Optional.empty(),
                usesAllowed,
                Supply.NONE,
                Optional.empty(),
                note);
    }

    /** Size by ISO 3630-1: the tip diameter in hundredths of a millimetre, rounded. */
    public int size() {
        return (int) Math.round(design.tipDiameterMm() * 100);
    }

    /** A draft that begins as this entry. */
    public InstrumentDraft draft() {
        return new InstrumentDraft(this);
    }
}
