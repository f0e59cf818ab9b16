/**
 * JSON text (RFC 8259) as a tree that knows the line and column of every value, and back. In: text of any origin, with
 * limits on its size, depth and number of values. Out: a tree, or faults with their place; text with a fixed layout.
 */
@NullMarked
package org.taperwright.library.exchange.json;

import org.jspecify.annotations.NullMarked;
