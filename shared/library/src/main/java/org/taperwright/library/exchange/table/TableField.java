package org.taperwright.library.exchange.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Unit;

/**
 * A field that a column of a table can hold.
 *
 * @param heading the heading it is written under; its name for people
 * @param others what else people head such a column with
 * @param kind what its cells hold
 * @param unit the unit of numbers without one
 * @param words the words its cells may hold, as people write them in lower case, each with the word of the form
 * @param path where it stands in the form
 * @param placing puts it there
 */
record TableField(
        String heading,
        List<String> others,
        CellKind kind,
        Optional<Unit> unit,
        Map<String, String> words,
        String path,
        Placing placing) {
    TableField {
        others = List.copyOf(others);
        words = Map.copyOf(words);
    }

    static TableField text(String heading, String path, String... others) {
        return of(heading, CellKind.TEXT, Optional.empty(), path, Placing.at(path), others);
    }

    static TableField number(String heading, Unit unit, String path, String... others) {
        return of(heading, CellKind.NUMBER, Optional.of(unit), path, Placing.at(path), others);
    }

    static TableField of(
            String heading, CellKind kind, Optional<Unit> unit, String path, Placing placing, String... others) {
        return new TableField(heading, List.of(others), kind, unit, Map.of(), path, placing);
    }

    static TableField word(String heading, Map<String, String> words, String path, Placing placing, String... others) {
        return new TableField(heading, List.of(others), CellKind.WORD, Optional.empty(), words, path, placing);
    }

    /** By heading alone, for fields are looked up for every cell. */
    @Override
    public int hashCode() {
        return heading.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TableField field && field.heading.equals(heading) && field.path.equals(path);
    }

    /** The heading as it is written, with its unit. */
    String written() {
        return unit.filter(each -> !each.symbol().isEmpty())
                .map(each -> heading + " (" + each.symbol() + ")")
                .orElse(heading);
    }

    /** Whether a table that is written has it. */
    boolean exported() {
        return kind != CellKind.RANGE;
    }
}
