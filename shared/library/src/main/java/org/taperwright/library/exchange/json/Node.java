package org.taperwright.library.exchange.json;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/** A JSON value and the place where it begins. */
public sealed interface Node {
    /** Where the value begins. */
    Place place();

    /** What the value is, as a fault says it after "found". */
    String described();

    /** A field of an object: where its name stands, and its value. */
    record Member(Place namePlace, Node value) {}

    /** An object, its fields in the order of the text; the map is handed over, for a copy would cost as much again. */
    record ObjectNode(Place place, Map<String, Member> members) implements Node {
        public ObjectNode {
            members = Collections.unmodifiableMap(members);
        }

        @Override
        public String described() {
            return "an object {…}";
        }
    }

    /** An array. */
    record ArrayNode(Place place, List<Node> items) implements Node {
        public ArrayNode {
            items = List.copyOf(items);
        }

        @Override
        public String described() {
            return "a list […]";
        }
    }

    /** A string. */
    record TextNode(Place place, String value) implements Node {
        private static final int SHOWN = 40;

        @Override
        public String described() {
            String shown = value.length() <= SHOWN ? value : value.substring(0, SHOWN) + "…";
            return '"' + shown.replace("\n", "\\n") + '"';
        }
    }

    /** A number: as written, and its nearest double, which may be infinite or not a number. */
    record NumberNode(Place place, String written, double value) implements Node {
        private static final int SHOWN = 24;

        @Override
        public String described() {
            return written.length() <= SHOWN ? written : written.substring(0, SHOWN) + "…";
        }
    }

    /** True or false. */
    record FlagNode(Place place, boolean value) implements Node {
        @Override
        public String described() {
            return String.valueOf(value);
        }
    }

    /** Null. */
    record NullNode(Place place) implements Node {
        @Override
        public String described() {
            return "null";
        }
    }
}
