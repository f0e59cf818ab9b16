package org.taperwright.mechanics.properties;

import java.util.List;

/** The blade along its length, from the tip to the end of the working part, by rising level. */
public record BladeProfile(List<ProfilePoint> points) {
    public BladeProfile {
        points = List.copyOf(points);
    }
}
