/**
 * Results kept with a comparison. In: a comparison as computed, and results kept before. Out: results to keep, and where they
 * differ from those kept.
 */
@NullMarked
package org.taperwright.library.comparison;

import org.jspecify.annotations.NullMarked;
