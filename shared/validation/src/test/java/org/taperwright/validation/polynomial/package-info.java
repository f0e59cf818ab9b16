/**
 * A second method for the helical factors: Ritz's, with polynomials over the whole section instead of elements. Exact
 * integrals from the outline alone; an upper bound to the stiffness, close where the section has no long arms.
 */
package org.taperwright.validation.polynomial;
