/**
 * What a sequence does stroke by stroke, made ready to be shown: no component. In: an arrangement of the library's things. Out: rows and
 * cells with their standing and bands, curves along the canal, remarks.
 */
@NullMarked
package org.taperwright.sequencer.outcome;

import org.jspecify.annotations.NullMarked;
