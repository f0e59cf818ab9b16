package org.taperwright.library.exchange;

import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;

/**
 * A fault and where in which file it stands.
 *
 * @param source the file, as the person named it
 * @param line from 1
 * @param column from 1, in characters
 * @param fault what is wrong: where in the words of the form, what is there, what was expected
 */
public record FileFault(String source, int line, int column, Fault fault) {
    static FileFault at(String source, Place place, Fault fault) {
        return new FileFault(source, place.line(), place.column(), fault);
    }

    /** A fault of a file's text. */
    public static FileFault of(String source, PlacedFault placed) {
        return at(source, placed.place(), placed.fault());
    }

    /** One line for people: {@code design.json:12:7: taper[1].taper: found "abc"; expected a number, mm per mm}. */
    public String sentence() {
        return source + ':' + line + ':' + column + ": " + fault.sentence();
    }
}
