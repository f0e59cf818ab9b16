/**
 * Beneath the lanes: what each step does, curves along the canal, cleaning and packing, what is not known, and many canals. In: an
 * arrangement and the selected step. Out: the step a person selects, canals taken into the library.
 */
@NullMarked
package org.taperwright.sequencer.ui.outcome;

import org.jspecify.annotations.NullMarked;
