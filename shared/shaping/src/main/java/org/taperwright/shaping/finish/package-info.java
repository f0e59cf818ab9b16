/**
 * What fits a canal: largest inscribed circles by level, the needles that pass them, by width and by stiffness, and the cones that fill
 * it. In: a canal as it was shaped. Out: {@link org.taperwright.shaping.finish.Finish}: depths, where cones bind, clearances, shares filled.
 * Sources: plane and solid geometry (computed, given the space); gauges of ISO 9626 and tolerances of ISO 6877, both from memory; reach of a
 * steel needle by placement (index).
 */
@NullMarked
package org.taperwright.shaping.finish;

import org.jspecify.annotations.NullMarked;
