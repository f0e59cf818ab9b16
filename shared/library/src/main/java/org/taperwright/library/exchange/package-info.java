/**
 * JSON forms of every thing, with their published schema, read and written. In: files. Out: things or faults
 * with file, field, line and column.
 */
@NullMarked
package org.taperwright.library.exchange;

import org.jspecify.annotations.NullMarked;
