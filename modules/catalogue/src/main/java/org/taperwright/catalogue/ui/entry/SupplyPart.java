package org.taperwright.catalogue.ui.entry;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.Supply;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.Written;
import org.taperwright.workbench.ui.WrittenField;

/** The part of an instrument's form that is about where it comes from and how many lie in the drawer. */
final class SupplyPart {
    private final EditedInstrument edited;
    private final NameField supplier = new NameField("instrument.supplier", "Supplier");
    private final NameField lot = new NameField("instrument.lot", "Lot");
    private final WrittenField<Optional<LocalDate>> expiry =
            new WrittenField<>("instrument.expiry", "Expiry", Written.day(), Optional.empty());
    private final WrittenField<Optional<Price>> price =
            new WrittenField<>("instrument.price", "Price", Prices.written(), Optional.empty());
    private final WrittenField<Integer> stock =
            new WrittenField<>("instrument.stock", "Stock", Written.count(Supply.MOST), 0);
    private final WrittenField<Integer> level =
            new WrittenField<>("instrument.reorder", "Reorder level", Written.count(Supply.MOST), 0);

    SupplyPart(EditedInstrument edited) {
        this.edited = edited;
        supplier.onCommit(words -> change("Supplier", words, supply -> supply.withSupplier(words)));
        lot.onCommit(words -> change("Lot", words, supply -> supply.withLot(words)));
        expiry.onCommit(day -> change("Expiry", text(day, LocalDate::toString), supply -> supply.withExpiry(day)));
        price.onCommit(cost -> change("Price", text(cost, Price::text), supply -> supply.withPrice(cost)));
        stock.onCommit(count -> change("Stock", count.toString(), supply -> supply.withStock(count)));
        level.onCommit(count -> change("Reorder level", count.toString(), supply -> supply.withReorderLevel(count)));
    }

    void addTo(FormPane form) {
        form.heading("Supply")
                .row("Stock", stock, "Unused pieces in stock")
                .row("Reorder level", level, "Fewest that should be in stock; 0 when none is kept")
                .row("Supplier", supplier, "Who sells it")
                .row("Lot", lot, "Lot of those in stock")
                .row("Expiry", expiry, "Last day on which those in stock may be used")
                .row("Price", price, "Price of one piece");
    }

    void show(Supply supply) {
        supplier.setValue(supply.supplier());
        lot.setValue(supply.lot());
        expiry.setValue(supply.expiry());
        price.setValue(supply.price());
        stock.setValue(supply.stock());
        level.setValue(supply.reorderLevel());
    }

    private void change(String field, String words, UnaryOperator<Supply> change) {
        edited.change(field, words, instrument -> supplied(instrument, change));
    }

    private static Instrument supplied(Instrument instrument, UnaryOperator<Supply> change) {
        return instrument.draft().supply(change.apply(instrument.supply())).instrument();
    }

    private static <T> String text(Optional<T> value, Function<T, String> words) {
        return value.map(words).orElse("");
    }
}
