package org.taperwright.library.exchange.table;

/** Takes the rows of a table as they are read. */
public interface RowSink {
    /**
     * The table begins.
     *
     * @param header its first row as it stood
     */
    void begin(String header);

    /** A row. */
    void row(TableRow row);
}
