/**
 * Canals as tables of points: comma-separated values with a row for each place along the canal. In: a table. Out: a canal, or faults with
 * line and column. Source: the course is smoothed by {@link org.taperwright.shaping.canal.fit.BendsFit}.
 */
@NullMarked
package org.taperwright.library.exchange.course;

import org.jspecify.annotations.NullMarked;
