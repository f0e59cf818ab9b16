/**
 * Things on their way into and out of a library. In: a file that offers things, and the library as it stands. Out: what of
 * them is new, the same or changed, before anything happens, and then the changes of one edit; and a selection with all
 * that it refers to, as a file.
 */
@NullMarked
package org.taperwright.library.exchange.transfer;

import org.jspecify.annotations.NullMarked;
