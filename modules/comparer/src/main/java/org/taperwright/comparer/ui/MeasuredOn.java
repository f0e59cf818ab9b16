package org.taperwright.comparer.ui;

import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.Measured;

/** Measurements, and the design of the instrument they were made on. */
record MeasuredOn(ThingId design, Measured measured) {}
