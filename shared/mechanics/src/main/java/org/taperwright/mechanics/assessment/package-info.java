/**
 * Everything computed of one design in one immutable record.
 * In: a design. Out: {@link org.taperwright.mechanics.assessment.Assessment}.
 */
@NullMarked
package org.taperwright.mechanics.assessment;

import org.jspecify.annotations.NullMarked;
