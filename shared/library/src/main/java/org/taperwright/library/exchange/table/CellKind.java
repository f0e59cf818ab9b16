package org.taperwright.library.exchange.table;

/** What a cell of a column holds. */
enum CellKind {
    TEXT,
    /** One of the field's words, in any case. */
    WORD,
    NUMBER,
    /** Hundredths of a millimetre, or a tip diameter with its unit. */
    SIZE,
    /** mm per mm, or per cent where it is 1 or more, as the trade writes 04 for .04. */
    TAPER,
    /** A price, with or without its currency's code. */
    PRICE,
    /** Yes or no. */
    FLAG,
    /** A day. */
    DATE,
    /** One number or two with a dash between them, for tables that keep both ends in one cell; read only. */
    RANGE
}
