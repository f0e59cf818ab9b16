package org.taperwright.sequencer.ui;

import org.taperwright.mechanics.design.ThingId;

/**
 * An instrument that a patency or recapitulation may use.
 *
 * @param id the catalogue entry
 * @param name what people call it
 */
record FileChoice(ThingId id, String name) {}
