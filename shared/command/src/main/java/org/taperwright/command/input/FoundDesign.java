package org.taperwright.command.input;

import org.taperwright.library.exchange.Origin;
import org.taperwright.library.exchange.ReadThing;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;

/**
 * A design that a command names.
 *
 * @param asked the words that named it
 * @param id the identifier of the thing it stands in
 * @param design the design
 * @param origin where it was read from
 */
public record FoundDesign(String asked, ThingId id, Design design, Origin origin) {
    /** The design of a thing: the thing itself or the instrument's own. */
    static FoundDesign of(String asked, ReadThing thing) {
        if (thing.thing() instanceof Instrument instrument) {
            return new FoundDesign(
                    asked, thing.id(), instrument.design(), thing.origin().under("design"));
        }
        return new FoundDesign(asked, thing.id(), (Design) thing.thing(), thing.origin());
    }

    /** Whether words name this design: as it was asked for, its name in any case, or its identifier. */
    public boolean answersTo(String words) {
        return words.equals(asked) || words.equalsIgnoreCase(design.name()) || words.equals(id.value());
    }
}
