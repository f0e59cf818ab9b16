package org.taperwright.mechanics.section.families;

import java.util.List;
import java.util.stream.Stream;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Segment;

/**
 * Two cutting edges joined by S-shaped sides: an arc from (0.5, 0) to (-0.05, 0.33) bowed outwards by b1, an arc on to
 * (-0.5, 0) bowed inwards by b2, and both once more turned by half a turn.
 */
public final class DoubleS implements SectionFamily {
    private static final Point EDGE = new Point(0.5, 0);
    private static final Point SHOULDER = new Point(-0.05, 0.33);

    @Override
    public String id() {
        return "double-s";
    }

    @Override
    public String label() {
        return "Double S";
    }

    @Override
    public String explanation() {
        return "Two cutting edges, each hollow before it and full behind it, turned into each other like two letters S.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(
                new FamilyParameter(
                        "outwardSagitta",
                        "Outward bow",
                        "d",
                        0,
                        0.15,
                        0.09,
                        0.005,
                        false,
                        "Height of the full side over its chord."),
                new FamilyParameter(
                        "inwardSagitta",
                        "Inward bow",
                        "d",
                        0,
                        0.12,
                        0.08,
                        0.005,
                        false,
                        "Depth of the hollow side under its chord."));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        List<Segment> half = List.of(
                Segment.bowed(EDGE, SHOULDER, value(shape, "outwardSagitta")),
                Segment.bowed(SHOULDER, EDGE.times(-1), -value(shape, "inwardSagitta")));
        return Drawings.drawn(Stream.concat(half.stream(), half.stream().map(piece -> piece.turned(Math.PI)))
                .toList());
    }
}
