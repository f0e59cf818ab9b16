/**
 * What JSON forms are made of: one description of a value drives its reading, its writing and its published schema.
 * In: trees with lines and columns, or values. Out: values or faults; text; JSON Schema (draft 2020-12).
 */
@NullMarked
package org.taperwright.library.exchange.form;

import org.jspecify.annotations.NullMarked;
