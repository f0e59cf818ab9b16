/**
 * Ordered steps and the rules that check them. In: a sequence with its instruments, motor and canal.
 * Out: remarks as faults.
 */
@NullMarked
package org.taperwright.shaping.sequence;

import org.jspecify.annotations.NullMarked;
