/**
 * What a number is: its standing, unit, band, and how it is written for people.
 * In: plain doubles in engine units (mm, N, N mm, MPa, rad). Out: text and parsed values.
 */
@NullMarked
package org.taperwright.mechanics.quantity;

import org.jspecify.annotations.NullMarked;
