package org.taperwright.library.exchange.json;

import org.taperwright.mechanics.work.Fault;

/** A fault and where in the text it stands. */
public record PlacedFault(Place place, Fault fault) {}
