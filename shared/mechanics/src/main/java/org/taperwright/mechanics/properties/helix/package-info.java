/**
 * A uniformly twisted bar as an elastic body, exact along its length and by finite elements over its section.
 * In: an outline, Poisson's ratio. Out: stiffness and peak stress of the twisted bar against the straight one, for any
 * twist.
 *
 * <p>Lengths are in diameters and stresses in Young's moduli. X, Y turn with the section at the rate t (radians per
 * diameter of length, {@code t = 2 pi d / pitch}), and so do the components U, V, W of the displacement. Along the axis
 * at a fixed place {@code d/dz = d/dz|_XY + t R} with {@code R = Y d/dX - X d/dY}; for fields that go round with
 * {@code e^(i h t z)}, {@code D = t (R + i h)} gives the strains
 *
 * <pre>e_zz = D W + g        g_xz = D U - t V + W_X        g_yz = D V + t U + W_Y</pre>
 *
 * and the plane ones as usual, to which four <em>macroscopic strains</em> are added: extension (g = 1), two curvatures
 * (g = X, g = Y) and twist (g_xz = -Y, g_yz = X). Harmonic h = 0 holds extension and torsion; h = 1 holds bending, since a
 * curvature fixed in space goes round the section once a turn: g = -(X + i Y). Whatever macroscopic strain is not
 * prescribed is free, because some displacement produces it. The elastic energy is least.
 *
 * <p>Source: linear elasticity and Galerkin's method; derived for this purpose and held to an independent solution in the
 * validation suite.
 */
@NullMarked
package org.taperwright.mechanics.properties.helix;

import org.jspecify.annotations.NullMarked;
