package org.taperwright.library.exchange.csv;

/**
 * How much a table may hold before it is refused, so that no file can exhaust the memory.
 *
 * @param rowCharacters length of one row as written, and so of one line
 * @param cellCharacters length of one cell as written
 * @param cells cells in one row
 * @param rows rows in all
 */
public record CsvLimits(int rowCharacters, int cellCharacters, int cells, long rows) {
    /** What tables are read with: rows of a million characters, cells of 100,000, 500 cells, 20 million rows. */
    public static final CsvLimits USUAL = new CsvLimits(1_000_000, 100_000, 500, 20_000_000);
}
