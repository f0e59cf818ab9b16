/**
 * What each step does to the canal; for now by geometry. In: a sequence with its instruments, and a canal.
 * Out: where each step is wider than what was there before, by third.
 */
@NullMarked
package org.taperwright.shaping.passage;

import org.jspecify.annotations.NullMarked;
