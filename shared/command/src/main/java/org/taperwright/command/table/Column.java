package org.taperwright.command.table;

import java.util.List;

/**
 * A column of a table.
 *
 * @param headings lines above the cells: name, unit, standing; short lists leave lower lines empty
 * @param numbers whether cells are aligned on the decimal point rather than on the left
 */
public record Column(List<String> headings, boolean numbers) {
    public Column {
        headings = List.copyOf(headings);
    }

    /** A column of words. */
    public static Column words(String... headings) {
        return new Column(List.of(headings), false);
    }

    /** A column of numbers. */
    public static Column numbers(String... headings) {
        return new Column(List.of(headings), true);
    }
}
