package org.taperwright.shaping.kit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Supply;

/**
 * The list of what to order. Of each instrument {@code max(0, level + replacements - stock)}: the discarded pieces are
 * replaced from stock, and the stock is brought to its level again.
 */
public final class Reorders {
    private Reorders() {}

    /**
     * What to order, by supplier, those without a supplier last.
     *
     * @param catalogue every instrument whose stock is kept
     * @param kits those whose discarded pieces are to be replaced
     */
    public static List<Reorder> of(Map<ThingId, Instrument> catalogue, Collection<Kit> kits) {
        Map<ThingId, List<String>> wanted = wanted(kits);
        Map<String, List<Reorder.Line>> bySupplier =
                new TreeMap<>(Comparator.comparing(String::isEmpty).thenComparing(String.CASE_INSENSITIVE_ORDER));
        new TreeMap<>(catalogue).forEach((id, instrument) -> {
            Supply supply = instrument.supply();
            List<String> replaces = wanted.getOrDefault(id, List.of());
            int quantity = supply.reorderLevel() + replaces.size() - supply.stock();
            if (quantity > 0) {
                bySupplier
                        .computeIfAbsent(supply.supplier().strip(), each -> new ArrayList<>())
                        .add(new Reorder.Line(
                                id,
                                instrument.name(),
                                quantity,
                                supply.stock(),
                                supply.reorderLevel(),
                                replaces,
                                supply.price()));
            }
        });
        List<Reorder> orders = new ArrayList<>();
        bySupplier.forEach((supplier, lines) -> {
            lines.sort(Comparator.comparing(Reorder.Line::name, String.CASE_INSENSITIVE_ORDER)
                    .thenComparing(Reorder.Line::instrument));
            orders.add(new Reorder(supplier, lines, sums(lines)));
        });
        return orders;
    }

    private static Map<ThingId, List<String>> wanted(Collection<Kit> kits) {
        Map<ThingId, List<String>> wanted = new HashMap<>();
        for (Kit kit : kits) {
            for (Piece piece : kit.pieces()) {
                if (piece.discarded().filter(Discarding::replacementWanted).isPresent()) {
                    wanted.computeIfAbsent(piece.instrument(), id -> new ArrayList<>())
                            .add(piece.id());
                }
            }
        }
        return wanted;
    }

    private static List<Reorder.Sum> sums(List<Reorder.Line> lines) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        for (Reorder.Line line : lines) {
            line.price()
                    .ifPresent(price -> sums.merge(price.currency(), line.cost().orElseThrow(), BigDecimal::add));
        }
        return sums.entrySet().stream()
                .map(sum -> new Reorder.Sum(sum.getValue(), sum.getKey()))
                .toList();
    }
}
