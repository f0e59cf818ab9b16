/** Adapters of the designer's windows to the platform. In: the platform's events. Out: panels of {@code ui}. */
@NullMarked
package org.taperwright.designer;

import org.jspecify.annotations.NullMarked;
