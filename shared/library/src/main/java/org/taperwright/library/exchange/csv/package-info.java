/**
 * Tables as text, comma-separated values. In: bytes of any origin, with limits on lines, cells and rows. Out: rows whose
 * cells know their line and column, or what is wrong with a row, which then stands verbatim; and back.
 *
 * <p>Source: RFC 4180 (quoting, doubled quotes, line ends); beyond it semicolon and tab as delimiters, line feeds alone as
 * line ends, and a leading byte order mark, as spreadsheets write them (common practice, no source).
 */
@NullMarked
package org.taperwright.library.exchange.csv;

import org.jspecify.annotations.NullMarked;
