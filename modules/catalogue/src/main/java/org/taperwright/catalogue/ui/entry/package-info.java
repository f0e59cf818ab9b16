/**
 * Forms for what stands in the catalogue: one instrument field by field, many at once, a motor. In: what is selected on the
 * desk and what a person types. Out: edits by name. Holds no class of the platform.
 */
@NullMarked
package org.taperwright.catalogue.ui.entry;

import org.jspecify.annotations.NullMarked;
