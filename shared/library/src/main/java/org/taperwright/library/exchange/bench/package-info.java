/**
 * Measurements from a bench as tables. In: comma-separated values with headings. Out: a measured curve or lives, with the lines
 * that were passed over, or what is wrong, by line and column.
 */
@NullMarked
package org.taperwright.library.exchange.bench;

import org.jspecify.annotations.NullMarked;
