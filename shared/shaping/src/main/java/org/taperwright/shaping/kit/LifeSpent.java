package org.taperwright.shaping.kit;

import org.taperwright.mechanics.quantity.Shown;

/**
 * An estimated share of a piece's fatigue life that is spent: 0 new, 1 the cycles to fracture used up, by linear summing
 * of cycles (Palmgren 1924, Miner 1945).
 *
 * @param low lower end of its band
 * @param central the estimate
 * @param high upper end of its band
 */
public record LifeSpent(double low, double central, double high) {
    /** Greatest share that can be kept. */
    public static final double MOST = 1e6;

    public LifeSpent {
        if (!(0 <= low && low <= central && central <= high && high <= MOST)) {
            throw new IllegalArgumentException("has a share of life that is not 0 <= low <= central <= high");
        }
    }

    /**
     * Both together. The ends add as the estimates do, for the same uncertain constants stand behind both.
     */
    public LifeSpent plus(LifeSpent more) {
        return new LifeSpent(
                Math.min(MOST, low + more.low),
                Math.min(MOST, central + more.central),
                Math.min(MOST, high + more.high));
    }

    /** So many times over, as in a number of canals alike. */
    public LifeSpent times(int count) {
        return new LifeSpent(
                Math.min(MOST, low * count), Math.min(MOST, central * count), Math.min(MOST, high * count));
    }

    /** As written: {@code 45 % (20 to 110 %)}. */
    public String text() {
        return Shown.percent(central) + " (" + Shown.number(low * 100) + " to " + Shown.percent(high) + ")";
    }
}
