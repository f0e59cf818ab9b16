package org.taperwright.shaping.kit;

import java.util.List;
import java.util.Optional;

/**
 * A kit's piece in a sequence: what of its fatigue life was spent before, and what the sequence's canal spends of it. Standing: index.
 *
 * @param piece the piece
 * @param places the steps that it makes, counted from 0
 * @param spent share of its life that each of these steps spends, in their order; empty for one that was not made
 * @param limit share of life at which it is discarded
 */
public record CarriedPiece(Piece piece, List<Integer> places, List<Optional<LifeSpent>> spent, double limit) {
    private static final LifeSpent NOTHING = new LifeSpent(0, 0, 0);

    public CarriedPiece {
        places = List.copyOf(places);
        spent = List.copyOf(spent);
        if (places.size() != spent.size()) {
            throw new IllegalArgumentException("one share for each step");
        }
    }

    /** Share spent before, as far as it was estimated. */
    public LifeSpent before() {
        return piece.lifeSpent().orElse(NOTHING);
    }

    /** Share that one such canal spends. */
    public LifeSpent inOneCanal() {
        return spent.stream().flatMap(Optional::stream).reduce(NOTHING, LifeSpent::plus);
    }

    /** Share spent afterwards. */
    public LifeSpent after() {
        return before().plus(inOneCanal());
    }

    /** The first of its steps in which the estimate comes to the limit, counted from 0; empty where none does. */
    public Optional<Integer> passesIn() {
        LifeSpent sum = before();
        for (int i = 0; i < places.size(); i++) {
            sum = sum.plus(spent.get(i).orElse(NOTHING));
            if (sum.central() >= limit) {
                return Optional.of(places.get(i));
            }
        }
        return Optional.empty();
    }

    /** Whether the estimate stays below the limit while the upper end of its band does not. */
    public boolean mayPass() {
        return passesIn().isEmpty() && after().high() >= limit;
    }

    /**
     * How many such canals more it can shape before the estimate comes to the limit; empty where they spend nothing.
     *
     * @param uppermost whether to count by the upper end of the band rather than by the estimate
     */
    public Optional<Integer> canalsLeft(boolean uppermost) {
        double each = uppermost ? inOneCanal().high() : inOneCanal().central();
        double left = limit - (uppermost ? before().high() : before().central());
        return each > 0
                ? Optional.of((int) Math.min(Integer.MAX_VALUE, Math.max(0, Math.ceil(left / each) - 1)))
                : Optional.empty();
    }
}
