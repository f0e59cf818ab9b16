package org.taperwright.library.exchange.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.mechanics.work.Fault;

/** Says in plain words why a text is no JSON. */
final class Malformed {
    private static final Pattern CHARACTER = Pattern.compile("[Uu]nexpected character \\('(.)' \\(code");
    private static final Pattern WORD = Pattern.compile("Unrecognized token '([^']{1,40})");

    private Malformed() {}

    static Place place(JsonProcessingException broken) {
        JsonLocation location = broken.getLocation();
        return location == null
                ? Place.START
                : new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    static Fault fault(JsonProcessingException broken, String text) {
        if (broken instanceof StreamConstraintsException) {
            return Fault.impossible(
                    "file", "holds a name, string or number of excessive length", "expected a shorter one");
        }
        if (broken instanceof JsonEOFException) {
            return Fault.impossible("file", "ends in the middle", "expected the closing }, ] or \" of what was opened");
        }
        return Fault.impossible("file", what(broken.getOriginalMessage(), text), "expected well-formed JSON");
    }

    private static String what(String message, String text) {
        Matcher character = CHARACTER.matcher(message);
        if (character.find()) {
            String found = character.group(1).equals("\"") ? "a double quote" : '"' + character.group(1) + '"';
            return "is malformed here: " + found + " cannot stand in this place" + hint(message);
        }
        Matcher word = WORD.matcher(message);
        if (word.find()) {
            return "is malformed here: \"" + word.group(1) + "\" is no JSON value";
        }
        return text.indexOf('\0') >= 0 ? "holds binary data" : "is malformed here";
    }

    private static String hint(String message) {
        if (message.contains("double-quote to start field name")) {
            return " (a field name in double quotes must follow)";
        }
        if (message.contains("was expecting comma")) {
            return " (a comma is missing before it)";
        }
        if (message.contains("was expecting a colon")) {
            return " (a colon must follow the field name)";
        }
        return "";
    }
}
