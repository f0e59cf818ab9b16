/**
 * Finding instruments while words are typed. In: a library's snapshot and a filter. Out: entries by name.
 */
@NullMarked
package org.taperwright.library.search;

import org.jspecify.annotations.NullMarked;
