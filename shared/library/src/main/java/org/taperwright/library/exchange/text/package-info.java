/**
 * Text of any origin, as a stream, and files written whole. In: files in some encoding. Out: characters, or the number of the
 * byte that is none; files in UTF-8.
 */
@NullMarked
package org.taperwright.library.exchange.text;

import org.jspecify.annotations.NullMarked;
