/**
 * Metrics by designs against a datum. In: assessments. Out: a table, the undominated set.
 */
@NullMarked
package org.taperwright.mechanics.comparison;

import org.jspecify.annotations.NullMarked;
