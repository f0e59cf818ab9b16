package org.taperwright.library.exchange.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;

/** Parses JSON text into a tree of {@link Node}s. */
public final class JsonText {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** Shared, for a factory remembers the names it has seen, and making one costs more than reading a thing. */
    private static final JsonFactory USUAL = factory(Limits.USUAL);

    private JsonText() {}

    /** The tree, if the text is well formed, and what was wrong with it. */
    public record Parsed(Optional<Node> root, List<PlacedFault> faults) {
        public Parsed {
            faults = List.copyOf(faults);
        }
    }

    /** Parses a text. */
    public static Parsed parse(String text, Limits limits) {
        return parse(text, limits, true);
    }

    /** Parses a text of which nobody will be shown the lines, such as one out of the store: every value is at its start. */
    public static Parsed parseWithoutPlaces(String text, Limits limits) {
        return parse(text, limits, false);
    }

    private static Parsed parse(String text, Limits limits, boolean places) {
        if (text.length() > limits.characters()) {
            return refused(
                    Place.START,
                    Fault.impossible(
                            "file",
                            "holds " + text.length() + " characters",
                            "expected at most " + limits.characters()));
        }
        String body = text.isEmpty() || text.charAt(0) != BYTE_ORDER_MARK ? text : text.substring(1);
        if (body.isBlank()) {
            return refused(Place.START, Fault.impossible("file", "is empty", "expected a JSON form beginning with {"));
        }
        try (JsonParser parser = usual(limits).createParser(body)) {
            return new TreeBuilder(parser, limits, places).build();
        } catch (JsonProcessingException broken) {
            return refused(Malformed.place(broken), Malformed.fault(broken, body));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The shared factory where the limits are the usual ones. */
    static JsonFactory usual(Limits limits) {
        return limits.equals(Limits.USUAL) ? USUAL : factory(limits);
    }

    static JsonFactory factory(Limits limits) {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(limits.depth() + 2)
                        .maxStringLength(limits.textLength())
                        .maxNameLength(limits.textLength())
                        .maxNumberLength(limits.textLength())
                        .build())
                .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                .build();
    }

    private static Parsed refused(Place place, Fault fault) {
        return new Parsed(Optional.empty(), List.of(new PlacedFault(place, fault)));
    }
}
