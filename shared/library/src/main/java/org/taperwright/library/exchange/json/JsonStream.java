package org.taperwright.library.exchange.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;
import org.taperwright.library.exchange.text.UnreadableBytes;
import org.taperwright.mechanics.work.Fault;

/**
 * Reads an object whose one long list is given item by item, so that no more than one item is in memory. The limits hold
 * for each item and for each other field.
 */
public final class JsonStream {
    private final String listed;
    private final Limits limits;
    private final Parts parts;

    /** Takes the parts of the object as they are read. */
    public interface Parts {
        /** A field that is not the list, or that should be but holds something else. */
        void field(String name, Node.Member member);

        /** The list begins. */
        void list(Place namePlace);

        /** An item of the list, from 0. */
        void item(int index, Node item);

        /** What is wrong; the text is read no further. */
        void broken(PlacedFault fault);
    }

    /**
     * A reading.
     *
     * @param listed the field whose list is given item by item
     */
    public JsonStream(String listed, Limits limits, Parts parts) {
        this.listed = listed;
        this.limits = limits;
        this.parts = parts;
    }

    /** Reads a text to its end, or to the first place where it is malformed or beyond the limits. */
    public void read(Reader in) {
        try (JsonParser parser = JsonText.factory(limits).createParser(in)) {
            read(parser);
        } catch (JsonProcessingException broken) {
            refuse(Malformed.place(broken), Malformed.fault(broken, ""));
        } catch (UnreadableBytes foreign) {
            refuse(
                    Place.START,
                    Fault.impossible(
                            "file",
                            "is not UTF-8 text, first at byte " + foreign.position(),
                            "expected a JSON form in UTF-8"));
        } catch (IOException unreadable) {
            refuse(
                    Place.START,
                    Fault.impossible(
                            "file", "cannot be read (" + unreadable.getMessage() + ")", "expected a readable file"));
        }
    }

    private void read(JsonParser parser) throws IOException {
        JsonToken first = parser.nextToken();
        if (first == null) {
            refuse(Place.START, Fault.impossible("file", "is empty", "expected a JSON form beginning with {"));
        } else if (first != JsonToken.START_OBJECT) {
            Optional<Node> found = part(parser, "");
            found.ifPresent(node -> refuse(
                    node.place(), Fault.impossible("file", "found " + node.described(), "expected an object {…}")));
        } else if (fields(parser) && parser.nextToken() != null) {
            refuse(
                    here(parser),
                    Fault.impossible(
                            "file", "goes on after the form has ended", "expected nothing after the closing }"));
        }
    }

    private boolean fields(JsonParser parser) throws IOException {
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            Place namePlace = here(parser);
            boolean list = parser.nextToken() == JsonToken.START_ARRAY && name.equals(listed);
            if (list) {
                parts.list(namePlace);
                if (!items(parser)) {
                    return false;
                }
            } else {
                Optional<Node> value = part(parser, name);
                if (value.isEmpty()) {
                    return false;
                }
                parts.field(name, new Node.Member(namePlace, value.get()));
            }
        }
        return true;
    }

    private boolean items(JsonParser parser) throws IOException {
        for (int index = 0; parser.nextToken() != JsonToken.END_ARRAY; index++) {
            Optional<Node> item = part(parser, listed + '[' + index + ']');
            if (item.isEmpty()) {
                return false;
            }
            parts.item(index, item.get());
        }
        return true;
    }

    private Optional<Node> part(JsonParser parser, String path) throws IOException {
        JsonText.Parsed part = new TreeBuilder(parser, limits, true).part();
        for (PlacedFault each : part.faults()) {
            refuse(each.place(), under(path, each.fault()));
        }
        return part.root();
    }

    private static Fault under(String path, Fault fault) {
        boolean whole = fault.where().equals("file") || path.isEmpty();
        String where = whole ? fault.where() : path + '.' + fault.where();
        return new Fault(fault.weight(), where, fault.what(), fault.expected());
    }

    private void refuse(Place place, Fault fault) {
        parts.broken(new PlacedFault(place, fault));
    }

    private static Place here(JsonParser parser) {
        return new Place(
                parser.currentTokenLocation().getLineNr(),
                parser.currentTokenLocation().getColumnNr());
    }
}
