package org.taperwright.shaping.instrument;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where an instrument comes from and how many lie in the drawer.
 *
 * @param supplier who sells it
 * @param lot lot of those in stock
 * @param expiry last day on which those in stock may be used
 * @param price of one piece
 * @param stock unused pieces in stock
 * @param reorderLevel fewest that should be in stock; 0 when none is kept
 */
public record Supply(
        String supplier, String lot, Optional<LocalDate> expiry, Optional<Price> price, int stock, int reorderLevel) {
    /** Greatest count of stock or reorder level. */
    public static final int MOST = 1_000_000;

    /** Nothing known and nothing in stock. */
    public static final Supply NONE = new Supply("", "", Optional.empty(), Optional.empty(), 0, 0);

    public Supply {
        if (stock < 0 || stock > MOST || reorderLevel < 0 || reorderLevel > MOST) {
            throw new IllegalArgumentException("has a stock or reorder level below 0 or above " + MOST);
        }
    }

    /** Whether fewer are in stock than should be. */
    public boolean low() {
        return stock < reorderLevel;
    }

    /** The same with another supplier. */
    public Supply withSupplier(String value) {
        return new Supply(value, lot, expiry, price, stock, reorderLevel);
    }

    /** The same with another lot. */
    public Supply withLot(String value) {
        return new Supply(supplier, value, expiry, price, stock, reorderLevel);
    }

    /** The same with another expiry. */
    public Supply withExpiry(Optional<LocalDate> value) {
        return new Supply(supplier, lot, value, price, stock, reorderLevel);
    }

    /** The same with another price. */
    public Supply withPrice(Optional<Price> value) {
        return new Supply(supplier, lot, expiry, value, stock, reorderLevel);
    }

    /** The same with another stock. */
    public Supply withStock(int value) {
        return new Supply(supplier, lot, expiry, price, value, reorderLevel);
    }

    /** The same with another reorder level. */
    public Supply withReorderLevel(int value) {
        return new Supply(supplier, lot, expiry, price, stock, value);
    }
}
