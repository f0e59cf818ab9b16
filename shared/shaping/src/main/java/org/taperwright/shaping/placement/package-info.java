/**
 * Where an instrument lies in a curved canal, and what it presses on: the rod in the tube. In: a
 * {@link org.taperwright.shaping.placement.rod.Rod}, a centreline and the open space about it. Out:
 * {@link org.taperwright.shaping.placement.Placement}, contact zones, insertion force.
 *
 * <p>The rod's axis is {@code r = c(s) + u1 m1 + u2 m2} in the canal's own coordinates, exact for any bend, with
 * {@code a = 1 - kappa.u}, {@code A = a kappa + u''}, {@code tau = -2 kappa.u' - kappa'.u}, {@code q = a^2 + |u'|^2},
 * {@code J = sqrt q} and the curvature {@code k = (a A - tau u', u1' A2 - u2' A1) / q^1.5}. The energy
 * {@code int (W(|k|; x) - Q) J ds} and that of an elastic wall are made least. The level {@code x(s) = int_s^z J} and the axial
 * push {@code Q(s) = int_s^z (dW/dx) J} follow in passes. Source: differential geometry of a curve about a curve; large
 * displacements of an inextensible rod without twist; the wall as a bed of springs over support functions.
 */
@NullMarked
package org.taperwright.shaping.placement;

import org.jspecify.annotations.NullMarked;
