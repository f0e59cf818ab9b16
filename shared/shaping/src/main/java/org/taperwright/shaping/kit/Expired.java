package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.taperwright.shaping.instrument.Instrument;

/** The last day of use is over. */
record Expired() implements DiscardRule {
    @Override
    public String id() {
        return "expired";
    }

    @Override
    public String explanation() {
        return "A piece is discarded once the last day on which it may be used is over.";
    }

    @Override
    public String source() {
        return "the maker's label, as entered with the piece";
    }

    @Override
    public Optional<DiscardReason> check(Piece piece, Optional<Instrument> entry, LocalDate today) {
        return piece.expiry()
                .filter(today::isAfter)
                .map(expiry -> DiscardReason.counted(this, "Expired on " + expiry + "."));
    }
}
