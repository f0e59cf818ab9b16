package org.taperwright.library.exchange.csv;

import org.taperwright.library.exchange.json.Place;

/**
 * A cell of a row.
 *
 * @param place where it begins, its quote included
 * @param text what it holds, without the quotes around it
 * @param quoted whether it stood in quotes; blanks around a bare cell mean nothing
 */
public record CsvCell(Place place, String text, boolean quoted) {}
