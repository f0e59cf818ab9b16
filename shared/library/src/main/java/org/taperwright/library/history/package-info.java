/**
 * Edits by name, undone and redone as a walk over immutable revisions. In: edits. Out: snapshots.
 */
@NullMarked
package org.taperwright.library.history;

import org.jspecify.annotations.NullMarked;
