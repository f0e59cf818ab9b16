/**
 * What stands in the catalogue: instruments, their colours by ISO 3630-1, their supply, and motors.
 * In: what a person enters. Out: records.
 */
@NullMarked
package org.taperwright.shaping.instrument;

import org.jspecify.annotations.NullMarked;
