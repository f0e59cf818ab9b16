package org.taperwright.mechanics.section;

import java.util.List;

/**
 * A closed, simple, anticlockwise outline whose circumscribed circle about the instrument's axis (the origin) has
 * diameter 1. Each segment begins where the one before ends.
 */
public record Outline(List<Segment> segments) {
    public Outline {
        segments = List.copyOf(segments);
    }
}
