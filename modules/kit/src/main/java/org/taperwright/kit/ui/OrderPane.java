package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.kit.Reorder;

/** What to order by supplier: what is below its reorder level and what replaces discarded pieces, of the whole library. */
final class OrderPane extends JPanel {
    private final ListPane list = new ListPane(
            "kit.orders",
            "Reorder list",
            List.of("Supplier", "Instrument", "Order", "Why", "Price", "Cost"),
            List.of(170, 240, 60, 300, 100, 100));

    OrderPane() {
        super(new BorderLayout());
        add(list);
    }

    void show(KitReading reading) {
        List<List<String>> rows = new ArrayList<>();
        for (Reorder order : reading.orders()) {
            for (Reorder.Line line : order.lines()) {
                rows.add(List.of(
                        order.supplier().isEmpty() ? "no supplier entered" : order.supplier(),
                        line.name(),
                        Integer.toString(line.quantity()),
                        line.why(),
                        line.price().map(Price::text).orElse(""),
                        line.cost()
                                .map(cost -> new Reorder.Sum(
                                                cost, line.price().orElseThrow().currency())
                                        .text())
                                .orElse("")));
            }
        }
        list.show(sentence(reading.orders()), rows);
    }

    private static String sentence(List<Reorder> orders) {
        if (orders.isEmpty()) {
            return "Nothing to order: every stock is at its reorder level, and no discarded piece waits for a new one.";
        }
        return orders.stream().map(OrderPane::sums).collect(Collectors.joining("  "));
    }

    private static String sums(Reorder order) {
        String supplier = order.supplier().isEmpty() ? "No supplier entered" : order.supplier();
        String cost = order.sums().isEmpty()
                ? "no prices"
                : order.sums().stream().map(Reorder.Sum::text).collect(Collectors.joining(", "));
        String without = order.withoutPrice() == 0 ? "" : ", " + order.withoutPrice() + " without a price";
        return supplier + ": " + order.lines().size() + (order.lines().size() == 1 ? " line, " : " lines, ") + cost
                + without + ".";
    }
}
