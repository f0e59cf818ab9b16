package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.DiscardReason.Weight;

/**
 * The estimated share of fatigue life spent has reached a limit, or the upper end of its band has.
 *
 * @param limit share of the life, 1 for the whole
 */
record LifeShareSpent(double limit) implements DiscardRule {
    @Override
    public String id() {
        return "life-share";
    }

    @Override
    public String explanation() {
        return "A piece is discarded once the estimated share of its fatigue life spent reaches " + Shown.percent(limit)
                + ", and considered once the upper end of the band does.";
    }

    @Override
    public String source() {
        return COMMON_PRACTICE;
    }

    @Override
    public Optional<DiscardReason> check(Piece piece, Optional<Instrument> entry, LocalDate today) {
        return piece.lifeSpent().filter(spent -> spent.high() >= limit).map(spent -> {
            boolean reached = spent.central() >= limit;
            String which = reached ? "it reaches" : "its band reaches";
            return new DiscardReason(
                    id(),
                    reached ? Weight.DISCARD : Weight.CONSIDER,
                    "An estimated " + spent.text() + " of its fatigue life is spent; " + which + " the limit of "
                            + Shown.percent(limit) + "." + uncovered(piece),
                    Optional.of(Standing.ESTIMATE),
                    source());
        });
    }

    private static String uncovered(Piece piece) {
        int count = piece.usesWithoutEstimate();
        return count == 0 ? "" : " Of its uses, " + count + " of " + piece.uses() + " are not in the estimate.";
    }
}
