package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.taperwright.shaping.instrument.Instrument;

/** The maker's number of uses is reached. */
record UsesReached() implements DiscardRule {
    @Override
    public String id() {
        return "uses-reached";
    }

    @Override
    public String explanation() {
        return "A piece is discarded once it has been used as often as its maker allows.";
    }

    @Override
    public String source() {
        return "the maker's instructions, as entered with the instrument";
    }

    @Override
    public Optional<DiscardReason> check(Piece piece, Optional<Instrument> entry, LocalDate today) {
        return entry.map(Instrument::usesAllowed)
                .filter(allowed -> allowed > 0 && piece.uses() >= allowed)
                .map(allowed -> DiscardReason.counted(
                        this, "Used " + Counted.times(piece.uses()) + "; its maker allows " + allowed + "."));
    }
}
