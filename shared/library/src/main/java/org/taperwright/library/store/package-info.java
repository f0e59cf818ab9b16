/**
 * The library on disk: every thing as its versioned JSON form, in append-only revisions, with the columns searched on.
 * In: things. Out: entries.
 */
@NullMarked
package org.taperwright.library.store;

import org.jspecify.annotations.NullMarked;
