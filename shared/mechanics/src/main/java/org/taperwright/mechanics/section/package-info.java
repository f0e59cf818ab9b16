/**
 * Cross-section outlines of unit diameter: families, custom outlines, cutting edges with their angles.
 * In: {@link org.taperwright.mechanics.section.SectionShape}. Out: {@link org.taperwright.mechanics.section.Outline}
 * and {@link org.taperwright.mechanics.section.Edge}.
 */
@NullMarked
package org.taperwright.mechanics.section;

import org.jspecify.annotations.NullMarked;
