package org.taperwright.mechanics.section.families;

import java.util.List;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Segment;

/**
 * One cutting edge at (0.5, 0): a circle of diameter k that touches the circumscribed circle from inside at (-0.5, 0),
 * and its two tangents from the edge.
 */
public final class Teardrop implements SectionFamily {
    @Override
    public String id() {
        return "teardrop";
    }

    @Override
    public String label() {
        return "Teardrop";
    }

    @Override
    public String explanation() {
        return "One cutting edge opposite a round back, as where a single helical flute is ground.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(new FamilyParameter(
                "coreDiameter",
                "Back diameter",
                "d",
                0.2,
                0.9,
                0.6,
                0.01,
                false,
                "Diameter of the round back, which touches the circumscribed circle opposite the edge."));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        double radius = value(shape, "coreDiameter") / 2;
        Point centre = new Point(radius - 0.5, 0);
        double touch = Math.acos(radius / (1 - radius));
        Segment back = new Segment.Arc(centre, radius, touch, 2 * Math.PI - touch);
        Point edge = new Point(0.5, 0);
        return Drawings.drawn(List.of(new Segment.Line(edge, back.start()), back, new Segment.Line(back.end(), edge)));
    }
}
