/**
 * Finding instruments. In: a filter, a library's snapshot, an instrument. Out: whether the filter lets it through.
 */
@NullMarked
package org.taperwright.library.search;

import org.jspecify.annotations.NullMarked;
