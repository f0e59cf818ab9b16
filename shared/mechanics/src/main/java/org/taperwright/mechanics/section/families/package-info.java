/**
 * The families of sections that are shipped, each one class registered by a service line. In: a
 * {@link org.taperwright.mechanics.section.SectionShape} whose numbers are within the declared limits. Out: its exact
 * outline of lines and arcs.
 */
@NullMarked
package org.taperwright.mechanics.section.families;

import org.jspecify.annotations.NullMarked;
