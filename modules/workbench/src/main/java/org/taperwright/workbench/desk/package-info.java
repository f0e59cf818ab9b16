/**
 * The desk itself: a library's history made into what every window works on, and computations off the event thread.
 * In: a library's {@link org.taperwright.library.history.EditHistory}. Out: a
 * {@link org.taperwright.workbench.api.Desk}. Holds no class of the platform.
 */
@NullMarked
package org.taperwright.workbench.desk;

import org.jspecify.annotations.NullMarked;
