/**
 * Numbers of a section (area to torsion constant) and of the blade along its length.
 * In: {@link org.taperwright.mechanics.section.Outline}, a design. Out:
 * {@link org.taperwright.mechanics.properties.SectionProperties},
 * {@link org.taperwright.mechanics.properties.BladeProfile}.
 */
@NullMarked
package org.taperwright.mechanics.properties;

import org.jspecify.annotations.NullMarked;
