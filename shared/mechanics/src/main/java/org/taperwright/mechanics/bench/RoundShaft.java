package org.taperwright.mechanics.bench;

import java.util.List;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

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

    /** The circle. */
    static final Outline OUTLINE = new Outline(List.of(
            new Segment.Arc(new Point(0, 0), 0.5, 0, Math.PI),
            new Segment.Arc(new Point(0, 0), 0.5, Math.PI, 2 * Math.PI)));

    private RoundShaft() {}
}
