/**
 * Uniformly twisted bars: how twisting a section along the axis changes its bending and torsional stiffness.
 * In: {@link org.taperwright.mechanics.section.Outline} and Poisson's ratio. Out:
 * {@link org.taperwright.mechanics.properties.helix.HelicalFactors}.
 * Source: three-dimensional elasticity of a body with helical symmetry, displacements invariant (extension and torsion)
 * or of one harmonic (bending) along the helix, by the Ritz method on the section; the symmetry as in A. Treyssede, Wave
 * Motion 45 (2008), quoted from memory.
 */
@NullMarked
package org.taperwright.mechanics.properties.helix;

import org.jspecify.annotations.NullMarked;
