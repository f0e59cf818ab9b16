package org.taperwright.shaping.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.taperwright.mechanics.design.ThingId;

/**
 * The instruments a person owns for a purpose.
 *
 * @param name what people call it
 * @param purpose what it is for
 * @param motor the owner's motor
 * @param pieces each with an identifier of its own
 * @param note free text
 */
public record Kit(String name, String purpose, Optional<ThingId> motor, List<Piece> pieces, String note) {
    public Kit {
        pieces = List.copyOf(pieces);
        Set<String> ids = new HashSet<>();
        for (Piece piece : pieces) {
            if (!ids.add(piece.id())) {
                throw new IllegalArgumentException("has two pieces called \"" + piece.id() + "\"");
            }
        }
    }

    /** The piece of an identifier. */
    public Optional<Piece> piece(String id) {
        return pieces.stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    /** The pieces that are not discarded. */
    public List<Piece> inUse() {
        return pieces.stream().filter(piece -> piece.discarded().isEmpty()).toList();
    }
}
