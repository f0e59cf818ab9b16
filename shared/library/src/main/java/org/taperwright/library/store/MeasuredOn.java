package org.taperwright.library.store;

import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.Measured;

/**
 * Measurements kept with a comparison.
 *
 * @param design the design of the instruments they were made on
 * @param measured the measurements
 */
public record MeasuredOn(ThingId design, Measured measured) {}
