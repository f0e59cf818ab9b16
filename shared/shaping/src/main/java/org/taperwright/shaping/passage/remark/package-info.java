/**
 * What deserves a look in a sequence once it has been run: plug-ins beside those that look at a sequence as it is set. In: a sequence and
 * how it shapes its canal. Out: remarks as faults. Sources: each rule's own, or "assumed, no source".
 */
@NullMarked
package org.taperwright.shaping.passage.remark;

import org.jspecify.annotations.NullMarked;
