/** Adapter of the kit's window to the platform. In: the platform's events. Out: the panel of {@code ui}. */
@NullMarked
package org.taperwright.kit;

import org.jspecify.annotations.NullMarked;
