/** Text of any origin, as a stream. In: files in some encoding. Out: characters, or the number of the byte that is none. */
@NullMarked
package org.taperwright.library.exchange.text;

import org.jspecify.annotations.NullMarked;
