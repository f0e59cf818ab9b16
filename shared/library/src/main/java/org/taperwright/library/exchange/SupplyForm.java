package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.currency;
import static org.taperwright.library.exchange.form.Forms.date;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.whole;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.Supply;

/** The form of an instrument's supply. */
final class SupplyForm {
    /** A price has at most 14 digits, so a double holds it exactly enough to be read as the same decimal. */
    private static final Field<Price, Double> AMOUNT = required(
            "amount",
            number(0, Price.MOST, ""),
            "of one piece, at most four decimals",
            price -> price.amount().doubleValue());

    private static final Field<Price, String> CURRENCY =
            required("currency", currency(), "code of ISO 4217, such as EUR", Price::currency);
    private static final RecordForm<Price> PRICE_FORM = new RecordForm<>(
            "price",
            "A price.",
            true,
            List.of(AMOUNT, CURRENCY),
            values -> new Price(BigDecimal.valueOf(values.of(AMOUNT)), values.of(CURRENCY)));

    private static final Field<Supply, String> SUPPLIER =
            standing("supplier", "", line(), "who sells it", Supply::supplier);
    private static final Field<Supply, String> LOT = standing("lot", "", line(), "lot of those in stock", Supply::lot);
    private static final Field<Supply, Optional<LocalDate>> EXPIRY =
            optional("expiry", date(), "last day on which those in stock may be used", Supply::expiry);
    private static final Field<Supply, Optional<Price>> PRICE =
            optional("price", PRICE_FORM, "of one piece", Supply::price);
    private static final Field<Supply, Integer> STOCK =
            standing("stock", 0, whole(0, Supply.MOST), "unused pieces in stock", Supply::stock);
    private static final Field<Supply, Integer> REORDER_LEVEL = standing(
            "reorderLevel",
            0,
            whole(0, Supply.MOST),
            "fewest that should be in stock; 0 when none is kept",
            Supply::reorderLevel);

    static final RecordForm<Supply> FORM = new RecordForm<>(
            "supply",
            "Where an instrument comes from and how many are in stock.",
            false,
            List.of(SUPPLIER, LOT, EXPIRY, PRICE, STOCK, REORDER_LEVEL),
            values -> new Supply(
                    values.of(SUPPLIER),
                    values.of(LOT),
                    values.of(EXPIRY),
                    values.of(PRICE),
                    values.of(STOCK),
                    values.of(REORDER_LEVEL)));

    private SupplyForm() {}
}
