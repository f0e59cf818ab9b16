/**
 * Instruments and motors as tables. In: comma-separated values with any headings, and which column means which field. Out:
 * things, or rows with what is wrong in which cell, which can be mended and read again; and tables from things.
 */
@NullMarked
package org.taperwright.library.exchange.table;

import org.jspecify.annotations.NullMarked;
