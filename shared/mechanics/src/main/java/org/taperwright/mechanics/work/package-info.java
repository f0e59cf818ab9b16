/**
 * Progress and cancelling of long computations, outcomes that know whether they are still current, and faults in what a
 * user entered, as values.
 */
@NullMarked
package org.taperwright.mechanics.work;

import org.jspecify.annotations.NullMarked;
