/**
 * The metrics that come with the program, one class each, registered by service lines.
 * In: an {@link org.taperwright.mechanics.assessment.Assessment}. Out: a reading with its standing.
 */
@NullMarked
package org.taperwright.mechanics.comparison.metrics;

import org.jspecify.annotations.NullMarked;
