package org.taperwright.catalogue.ui;

import java.util.function.Predicate;
import org.taperwright.shaping.instrument.Supply;

/** What a filter asks of the stock. */
enum StockFilter {
    ANY("any stock", supply -> true),
    IN_STOCK("in stock", supply -> supply.stock() > 0),
    LOW("below its reorder level", Supply::low);

    private final String word;
    private final Predicate<Supply> test;

    StockFilter(String word, Predicate<Supply> test) {
        this.word = word;
        this.test = test;
    }

    /** The word shown to people. */
    String word() {
        return word;
    }

    /** Whether a supply is let through. */
    boolean holds(Supply supply) {
        return test.test(supply);
    }
}
