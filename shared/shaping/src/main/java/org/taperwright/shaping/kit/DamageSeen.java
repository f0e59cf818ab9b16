package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import org.taperwright.shaping.instrument.Instrument;

/** Damage was seen. */
record DamageSeen() implements DiscardRule {
    @Override
    public String id() {
        return "damage-seen";
    }

    @Override
    public String explanation() {
        return "A piece is discarded once any damage is seen on it, however little it was used.";
    }

    @Override
    public String source() {
        return COMMON_PRACTICE;
    }

    @Override
    public Optional<DiscardReason> check(Piece piece, Optional<Instrument> entry, LocalDate today) {
        if (piece.damage().isEmpty()) {
            return Optional.empty();
        }
        String seen = piece.damage().stream().map(Damage::word).collect(Collectors.joining(", "));
        return Optional.of(DiscardReason.counted(this, "Damage was seen on it: " + seen + "."));
    }
}
