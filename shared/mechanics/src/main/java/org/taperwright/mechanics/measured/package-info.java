/**
 * Measured curves beside computed ones. In: a design, its alloy and what was measured on a bench. Out: residuals, and an alloy
 * whose chosen constants are fitted to the measurements, with their covariance. Source: least squares by Levenberg and
 * Marquardt (commons-math); covariance by the linear theory of errors.
 */
@NullMarked
package org.taperwright.mechanics.measured;

import org.jspecify.annotations.NullMarked;
