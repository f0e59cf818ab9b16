/**
 * St Venant torsion of a section: torsion constant and peak shear.
 * In: {@link org.taperwright.mechanics.properties.mesh.SectionMesh}. Out:
 * {@link org.taperwright.mechanics.properties.torsion.TorsionSolution}.
 * Source: Prandtl's stress function, as in Timoshenko and Goodier, Theory of Elasticity.
 */
@NullMarked
package org.taperwright.mechanics.properties.torsion;

import org.jspecify.annotations.NullMarked;
