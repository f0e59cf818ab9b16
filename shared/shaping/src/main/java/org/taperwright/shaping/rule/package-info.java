/**
 * The rules that ship, each a plug-in registered by a service line. In: a sequence with its instruments, motor and canal.
 * Out: remarks as faults. Sources: ISO 3630-1 for the series of sizes; otherwise common practice, no source, and said so.
 */
@NullMarked
package org.taperwright.shaping.rule;

import org.jspecify.annotations.NullMarked;
