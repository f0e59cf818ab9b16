package org.taperwright.library.exchange.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.shaping.instrument.PriceText;

/** Reads prices: a number, with the code of its currency (ISO 4217) before or after it, in the heading or elsewhere. */
final class CellPrices {
    private CellPrices() {}

    /** A price's amount and, where it is known, its currency, in the form's shape. */
    static Optional<Node> read(Place place, String text, CellNumbers numbers, Optional<String> columnCurrency) {
        return PriceText.of(text)
                .flatMap(parts -> numbers.plain(parts.amount()).map(value -> {
                    Map<String, Node.Member> members = new LinkedHashMap<>();
                    Node number = new Node.NumberNode(place, CellNumbers.written(value), value);
                    members.put("amount", new Node.Member(place, number));
                    parts.currency()
                            .or(() -> columnCurrency)
                            .ifPresent(code ->
                                    members.put("currency", new Node.Member(place, new Node.TextNode(place, code))));
                    return new Node.ObjectNode(place, members);
                }));
    }
}
