/**
 * Alloys: elastic constants and strengths with source, validity and band.
 */
@NullMarked
package org.taperwright.mechanics.alloy;

import org.jspecify.annotations.NullMarked;
