/**
 * Alloys: elastic constants and strengths with source, validity and band, and the stress laws they follow beyond the
 * elastic range. In: constants. Out: stress-strain curves in tension, compression and shear.
 */
@NullMarked
package org.taperwright.mechanics.alloy;

import org.jspecify.annotations.NullMarked;
