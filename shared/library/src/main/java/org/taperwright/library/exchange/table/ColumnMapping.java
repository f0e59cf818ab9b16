package org.taperwright.library.exchange.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which column of a table means which field. It fits every table with the same headings, so that it can be kept for the
 * next delivery of the same list.
 *
 * @param kind what the rows are
 * @param columns the columns in the order of the file, without the one that says why rows were not read
 */
public record ColumnMapping(TableKind kind, List<MappedColumn> columns) {
    /**
     * Checks that every field exists, is mapped once and has a unit of its own kind.
     *
     * @throws IllegalArgumentException if not
     */
    public ColumnMapping {
        columns = List.copyOf(columns);
        Set<String> seen = new HashSet<>();
        for (MappedColumn column : columns) {
            if (column.field().isPresent()) {
                TableField field = kind.field(column.field().get())
                        .orElseThrow(() -> new IllegalArgumentException(
                                "names the field \"" + column.field().get() + "\", which there is not"));
                if (!seen.add(field.heading())) {
                    throw new IllegalArgumentException("maps two columns to \"" + field.heading() + '"');
                }
                if (column.unit().isPresent()
                        && Headings.unit(field, column.unit().get()).isEmpty()) {
                    throw new IllegalArgumentException("gives \"" + field.heading() + "\" the unit \""
                            + column.unit().get() + '"');
                }
            }
        }
    }

    /** What the headings suggest. */
    public static ColumnMapping guessed(TableKind kind, List<String> headings) {
        return new ColumnMapping(
                kind,
                Headings.guessed(
                        kind,
                        headings.stream().filter(each -> !Headings.reason(each)).toList()));
    }

    /** The same with another meaning for one column; the column that had that meaning loses it. */
    public ColumnMapping with(int column, Optional<String> field, Optional<String> unit) {
        List<MappedColumn> changed = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            MappedColumn old = columns.get(i);
            boolean loses = field.isPresent() && old.field().equals(field);
            changed.add(loses ? new MappedColumn(old.heading(), Optional.empty(), Optional.empty()) : old);
        }
        changed.set(column, new MappedColumn(columns.get(column).heading(), field, unit));
        return new ColumnMapping(kind, changed);
    }

    /** Whether a table with these headings is of this mapping; case, signs and accents do not matter. */
    public boolean fits(List<String> headings) {
        return fingerprint().equals(Headings.fingerprint(headings));
    }

    /** Whether any column means anything. */
    public boolean meansSomething() {
        return columns.stream().anyMatch(column -> column.field().isPresent());
    }

    /** What tells tables of this mapping from others. */
    public List<String> fingerprint() {
        return Headings.fingerprint(columns.stream().map(MappedColumn::heading).toList());
    }
}
