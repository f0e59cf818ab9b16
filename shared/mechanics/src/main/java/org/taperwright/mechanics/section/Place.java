package org.taperwright.mechanics.section;

/** A place on an outline: which segment, and the parameter on it. */
record Place(int segment, double t) {}
