package org.taperwright.mechanics.section;

import java.util.List;
import java.util.Map;

/**
 * A section as a person chooses it: a family with its parameters, or a custom outline.
 *
 * @param family identifier of a {@link SectionFamily}
 * @param parameters by the family's parameter names; a missing one takes the family's default
 * @param edgeRounding radius that rounds the cutting edges, in diameters; 0 leaves them sharp
 * @param landWidth width of a margin ground on each cutting edge along the circumscribed circle, in diameters; 0 for none
 * @param points the outline's points for the custom family, any unit; empty for the others
 */
public record SectionShape(
        String family, Map<String, Double> parameters, double edgeRounding, double landWidth, List<Point> points) {
    public SectionShape {
        parameters = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(parameters));
        points = List.copyOf(points);
    }

    /** A family's section with sharp edges and no margin. */
    public static SectionShape of(String family, Map<String, Double> parameters) {
        return new SectionShape(family, parameters, 0, 0, List.of());
    }
}
