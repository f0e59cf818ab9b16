package org.taperwright.mechanics.assessment;

import java.util.List;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Outline;

/** A station's section: level in mm from the tip, outline of unit diameter, its numbers and its edges. */
public record AssessedSection(double levelMm, Outline outline, SectionProperties properties, List<Edge> edges) {
    public AssessedSection {
        edges = List.copyOf(edges);
    }
}
