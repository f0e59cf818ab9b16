package org.taperwright.library.exchange.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/** Builds the tree of one text; gives up at the first breach of a limit. */
final class TreeBuilder {
    /** Most objects have few fields. */
    private static final int FEW = 8;

    private final JsonParser parser;
    private final Limits limits;
    private final boolean places;
    private final List<PlacedFault> faults = new ArrayList<>();
    /** Where the parser is, such as {@code taper[1].taper}. */
    private final StringBuilder path = new StringBuilder();

    private int values;
    /** Where a part has to end, characters from the text's beginning. */
    private long latestEnd = Long.MAX_VALUE;

    TreeBuilder(JsonParser parser, Limits limits, boolean places) {
        this.parser = parser;
        this.limits = limits;
        this.places = places;
    }

    JsonText.Parsed build() throws IOException {
        parser.nextToken();
        Optional<Node> root = value(0);
        if (root.isPresent() && parser.nextToken() != null) {
            refuse("file", "goes on after the form has ended", "expected nothing after the closing }");
        }
        return new JsonText.Parsed(faults.isEmpty() ? root : Optional.empty(), faults);
    }

    /** The tree that begins at the parser's current token, a part of a larger text. */
    JsonText.Parsed part() throws IOException {
        latestEnd = parser.currentTokenLocation().getCharOffset() + limits.characters();
        Optional<Node> root = value(1);
        return new JsonText.Parsed(faults.isEmpty() ? root : Optional.empty(), faults);
    }

    private Optional<Node> value(int depth) throws IOException {
        values++;
        if (latestEnd < Long.MAX_VALUE && parser.currentTokenLocation().getCharOffset() > latestEnd) {
            refuse(
                    "file",
                    "holds a thing of more than " + limits.characters() + " characters",
                    "expected a smaller one");
            return Optional.empty();
        }
        if (values > limits.values()) {
            refuse("file", "holds more than " + limits.values() + " values", "expected fewer: split the file");
            return Optional.empty();
        }
        Place place = here();
        return switch (parser.currentToken()) {
            case START_OBJECT -> depth < limits.depth() ? object(place, depth) : tooDeep();
            case START_ARRAY -> depth < limits.depth() ? array(place, depth) : tooDeep();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Optional.of(number(place));
            case VALUE_TRUE, VALUE_FALSE -> Optional.of(new Node.FlagNode(place, parser.getBooleanValue()));
            case VALUE_NULL -> Optional.of(new Node.NullNode(place));
            default -> Optional.of(new Node.TextNode(place, parser.getText()));
        };
    }

    private Optional<Node> object(Place place, int depth) throws IOException {
        Map<String, Node.Member> members = new LinkedHashMap<>(FEW);
        int outside = path.length();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            Place namePlace = here();
            path.append(outside == 0 ? "" : ".").append(name);
            if (members.containsKey(name)) {
                refuse(
                        path.toString(),
                        "stands twice, first at line "
                                + members.get(name).namePlace().line(),
                        "expected each field once");
            }
            parser.nextToken();
            Optional<Node> value = value(depth + 1);
            if (value.isEmpty()) {
                return Optional.empty();
            }
            path.setLength(outside);
            members.putIfAbsent(name, new Node.Member(namePlace, value.get()));
        }
        return Optional.of(new Node.ObjectNode(place, members));
    }

    private Optional<Node> array(Place place, int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        int outside = path.length();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            path.append('[').append(items.size()).append(']');
            Optional<Node> item = value(depth + 1);
            if (item.isEmpty()) {
                return Optional.empty();
            }
            path.setLength(outside);
            items.add(item.get());
        }
        return Optional.of(new Node.ArrayNode(place, items));
    }

    private Node number(Place place) throws IOException {
        String written = parser.getText();
        boolean fraction = parser.currentToken() == JsonToken.VALUE_NUMBER_FLOAT && !parser.isNaN();
        return new Node.NumberNode(place, written, fraction ? parser.getDoubleValue() : valueOf(written));
    }

    /** The nearest double; the words for "not finite" that the parser lets through are read as what they say. */
    private static double valueOf(String written) {
        return switch (written) {
            case "NaN" -> Double.NaN;
            case "INF", "+INF", "Infinity", "+Infinity" -> Double.POSITIVE_INFINITY;
            case "-INF", "-Infinity" -> Double.NEGATIVE_INFINITY;
            default -> Double.parseDouble(written);
        };
    }

    private Optional<Node> tooDeep() {
        refuse(path.toString(), "goes deeper than " + limits.depth() + " levels", "expected a flatter form");
        return Optional.empty();
    }

    private void refuse(String where, String what, String expected) {
        faults.add(new PlacedFault(here(), Fault.impossible(where, what, expected)));
    }

    private Place here() {
        if (!places) {
            return Place.START;
        }
        JsonLocation location = parser.currentTokenLocation();
        return new Place(location.getLineNr(), location.getColumnNr());
    }
}
