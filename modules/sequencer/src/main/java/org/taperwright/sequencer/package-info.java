/** Adapters of the sequencer's windows to the platform. In: the platform's events. Out: panels of {@code ui}. */
@NullMarked
package org.taperwright.sequencer;

import org.jspecify.annotations.NullMarked;
