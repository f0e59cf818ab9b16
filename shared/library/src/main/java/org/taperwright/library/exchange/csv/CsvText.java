package org.taperwright.library.exchange.csv;

/** What a cell says. */
public final class CsvText {
    private CsvText() {}

    /** The text of a cell: without the blanks around a bare one, and without a guard against formulas. */
    public static String of(CsvCell cell) {
        return SpreadsheetText.restored(
                cell.quoted() ? cell.text() : cell.text().strip());
    }
}
