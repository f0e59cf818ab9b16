/**
 * One design moved parameter by parameter. In: a design and metrics. Out: the parameters it has, each metric along one of them,
 * and which of them moves a metric most. Every point is a whole assessment; no source but the metrics' own.
 */
@NullMarked
package org.taperwright.mechanics.comparison.sweep;

import org.jspecify.annotations.NullMarked;
