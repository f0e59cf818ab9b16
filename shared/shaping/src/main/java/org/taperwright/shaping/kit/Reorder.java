package org.taperwright.shaping.kit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Price;

/**
 * What to order from one supplier.
 *
 * @param supplier the supplier; empty when none is entered
 * @param lines one for each instrument
 * @param sums what the lines with a price cost together, one for each currency
 */
public record Reorder(String supplier, List<Line> lines, List<Sum> sums) {
    public Reorder {
        lines = List.copyOf(lines);
        sums = List.copyOf(sums);
    }

    /** How many lines have no price and are in no sum. */
    public int withoutPrice() {
        return (int) lines.stream().filter(line -> line.price().isEmpty()).count();
    }

    /** An amount in a currency by its code. */
    public record Sum(BigDecimal amount, String currency) {
        /** As written: {@code 112.50 EUR}. */
        public String text() {
            return amount.setScale(Math.max(2, amount.scale())).toPlainString() + ' ' + currency;
        }
    }

    /**
     * An instrument to order.
     *
     * @param instrument its catalogue entry
     * @param name its name
     * @param quantity how many, so that the stock is at its level once the replacements are taken from it
     * @param stock how many are in stock
     * @param reorderLevel fewest that should be
     * @param replaces the discarded pieces for which a new one is wanted
     * @param price of one
     */
    public record Line(
            ThingId instrument,
            String name,
            int quantity,
            int stock,
            int reorderLevel,
            List<String> replaces,
            Optional<Price> price) {
        public Line {
            replaces = List.copyOf(replaces);
        }

        /** What the line costs. */
        public Optional<BigDecimal> cost() {
            return price.map(one -> one.amount().multiply(BigDecimal.valueOf(quantity)));
        }

        /** Why it is ordered, for people. */
        public String why() {
            String replaced = replaces.isEmpty() ? "" : "replaces " + Counted.of(replaces.size(), "discarded piece");
            String level = reorderLevel == 0 ? stock + " in stock" : stock + " in stock, reorder level " + reorderLevel;
            return replaced.isEmpty() ? level : replaced + "; " + level;
        }
    }
}
