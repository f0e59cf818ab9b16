package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.FieldChange;
import org.taperwright.shaping.instrument.Instrument;

/** Invented kits and a catalogue of three instruments for tests. */
final class GivenKit {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 15);
    static final ThingId HAND = new ThingId("hand-25");
    static final ThingId ROTARY = new ThingId("rotary-30");
    static final ThingId GONE = new ThingId("gone");

    private GivenKit() {}

    /** A hand file 25/.02 and a rotary file 30/.06 that may be used four times, both 25 mm long. */
    static Map<ThingId, Instrument> catalogue() {
        return Map.of(
                HAND, Given.hand(25, 0.02).draft().name("Ditch 25/.02").instrument(),
                ROTARY,
                        new FieldChange.UsesAllowed(4)
                                .of(Given.rotary(30, 0.06)
                                        .draft()
                                        .name("Fen 30/.06")
                                        .instrument()));
    }

    static Piece piece(String id, ThingId instrument) {
        return new Piece(
                id,
                instrument,
                instrument.value(),
                "",
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of(),
                "");
    }

    static Kit kit(Piece... pieces) {
        return new Kit("Kit", "Bench.", Optional.empty(), List.of(pieces), "");
    }

    static Use use(LocalDate date, int canals, LifeSpent... spent) {
        return new Use(date, canals, Optional.empty(), List.of(spent).stream().findFirst(), "");
    }
}
