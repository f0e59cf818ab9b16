package org.taperwright.mechanics.comparison.definition;

import java.util.List;

/** A part of the designs' definitions in words, one for each design. */
public record DefinitionRow(String label, List<String> values) {
    public DefinitionRow {
        values = List.copyOf(values);
    }

    /** Whether the designs differ in it. */
    public boolean differs() {
        return values.stream().distinct().count() > 1;
    }
}
