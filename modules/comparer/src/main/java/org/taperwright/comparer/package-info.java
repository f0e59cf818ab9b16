/** Adapters of the comparer's windows to the platform. In: the platform's events. Out: panels of {@code ui}. */
@NullMarked
package org.taperwright.comparer;

import org.jspecify.annotations.NullMarked;
