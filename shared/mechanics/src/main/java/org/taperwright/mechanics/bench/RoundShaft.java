package org.taperwright.mechanics.bench;

import org.taperwright.mechanics.properties.SectionProperties;

/** The round shaft beyond the working part, in the closed forms of a circle of diameter 1 (Timoshenko; Nadai). */
final class RoundShaft {
    /** The circle's numbers. */
    static final SectionProperties SECTION = new SectionProperties(
            Math.PI / 4,
            0,
            0,
            Math.PI / 64,
            Math.PI / 64,
            0,
            Math.PI / 32,
            Math.PI / 32,
            16 / Math.PI,
            false,
            Math.PI / 12,
            1.0 / 6,
            1.0 / 6,
            1,
            1,
            0);

    private RoundShaft() {}
}
