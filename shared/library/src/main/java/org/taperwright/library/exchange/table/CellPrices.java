package org.taperwright.library.exchange.table;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;

/** Reads prices: a number, with the code of its currency (ISO 4217) before or after it, in the heading or elsewhere. */
final class CellPrices {
    private static final Pattern CODE = Pattern.compile("[A-Za-z]{3}");
    private static final Pattern PRICE = Pattern.compile("(?:([A-Za-z]{3}|€)\\s*)?([^A-Za-z€]*?)\\s*([A-Za-z]{3}|€)?");

    private CellPrices() {}

    /** The currency that a spelling names. */
    static Optional<String> currency(String spelling) {
        String bare = spelling.strip();
        if (bare.equals("€")) {
            return Optional.of("EUR");
        }
        return CODE.matcher(bare).matches() ? Optional.of(bare.toUpperCase(Locale.ROOT)) : Optional.empty();
    }

    /** A price's amount and, where it is known, its currency, in the form's shape. */
    static Optional<Node> read(Place place, String text, CellNumbers numbers, Optional<String> columnCurrency) {
        Matcher parts = PRICE.matcher(text);
        if (!parts.matches() || parts.group(1) != null && parts.group(3) != null) {
            return Optional.empty();
        }
        Optional<String> own = Optional.ofNullable(parts.group(1) != null ? parts.group(1) : parts.group(3));
        Optional<Double> amount = numbers.plain(parts.group(2).strip());
        return amount.map(value -> {
            Map<String, Node.Member> members = new LinkedHashMap<>();
            Node number = new Node.NumberNode(place, CellNumbers.written(value), value);
            members.put("amount", new Node.Member(place, number));
            own.flatMap(CellPrices::currency)
                    .or(() -> columnCurrency)
                    .ifPresent(code -> members.put("currency", new Node.Member(place, new Node.TextNode(place, code))));
            return new Node.ObjectNode(place, members);
        });
    }
}
