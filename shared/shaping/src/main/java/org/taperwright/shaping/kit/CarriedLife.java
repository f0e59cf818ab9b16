package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.taperwright.mechanics.design.ThingId;

/**
 * A sequence made with a kit's pieces, their fatigue carried from case to case.
 *
 * @param pieces the pieces that it takes, in the order of the steps
 * @param without the steps for which the kit has no piece in use, counted from 0
 */
public record CarriedLife(List<CarriedPiece> pieces, List<Integer> without) {
    public CarriedLife {
        pieces = List.copyOf(pieces);
        without = List.copyOf(without);
    }

    /** The kit with a use of each piece in its log, and with it the share of life that it spent. */
    public Kit logged(Kit kit, LocalDate date, int canals, Optional<ThingId> sequence) {
        Kit used = kit;
        for (CarriedPiece carried : pieces) {
            Use use = new Use(
                    date, canals, sequence, Optional.of(carried.inOneCanal().times(canals)), "");
            used = Kits.used(used, Set.of(carried.piece().id()), use);
        }
        return used;
    }
}
