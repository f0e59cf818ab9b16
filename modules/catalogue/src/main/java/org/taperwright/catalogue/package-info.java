/** Adapters of the catalogue's windows to the platform. In: the platform's events. Out: panels of {@code ui}. */
@NullMarked
package org.taperwright.catalogue;

import org.jspecify.annotations.NullMarked;
