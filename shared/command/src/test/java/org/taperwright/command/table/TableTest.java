package org.taperwright.command.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TableTest {
    @Test
    void numbersStandWithTheirPointsBelowEachOther() {
        Table table = Table.of(Column.words("name"), Column.numbers("length", "mm"))
                .row("one", "12.5")
                .row("second", "0.125")
                .row("third", "3")
                .row("none", "–");
        assertThat(table.lines())
                .containsExactly(
                        "name    length",
                        "            mm",
                        "------  ------",
                        "one     12.5",
                        "second   0.125",
                        "third    3",
                        "none     –");
    }

    @Test
    void aColumnIsAsWideAsItsWidestLine() {
        Table table = Table.of(Column.words("a"), Column.words("b")).row("long words", "x");
        assertThat(table.lines()).containsExactly("a           b", "----------  -", "long words  x");
    }

    @Test
    void aRowWithAnotherNumberOfCellsIsRefused() {
        Table table = Table.of(Column.words("a"));
        assertThatThrownBy(() -> table.row("1", "2")).hasMessageContaining("2 cells for 1 columns");
    }
}
