package org.taperwright.mechanics.section;

/**
 * A sharp turn of an outline: one vertex, one tight arc, or a run of small turns close together.
 *
 * @param entry where the turn begins
 * @param apex where half of it is done
 * @param exit where it ends
 * @param turn how far the direction turns, rad; positive to the left, which is a corner that sticks out
 */
record Corner(Place entry, Place apex, Place exit, double turn) {}
