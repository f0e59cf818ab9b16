/**
 * Finds the things that a command names. In: file names, names and identifiers. Out: things with their origin, or the
 * sentences that say what is wrong with the input.
 */
@NullMarked
package org.taperwright.command.input;

import org.jspecify.annotations.NullMarked;
