/**
 * What every window works on: the library, the selection, edits with undo, work off the event thread. In: edits and
 * computations from windows. Out: snapshots and outcomes, on the event thread. Holds no class of the platform.
 */
@NullMarked
package org.taperwright.workbench.api;

import org.jspecify.annotations.NullMarked;
