/**
 * What was measured beside what is computed. In: a design, its alloy and what was measured on a bench. Out: residuals, and an alloy
 * of one's own whose chosen constants are fitted to curves and lives, with their covariance. Source: least squares by Levenberg and
 * Marquardt (commons-math); covariance by the linear theory of errors.
 */
@NullMarked
package org.taperwright.mechanics.measured;

import org.jspecify.annotations.NullMarked;
