package org.taperwright.mechanics.section.families;

import java.util.List;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;

/**
 * Equilateral triangle with corners on the circle at 90°, 210° and 330°; sides straight or arcs of one sagitta. Convex
 * sides make it heavier, concave ones lighter and sharper.
 */
public final class Triangle implements SectionFamily {
    @Override
    public String id() {
        return "triangle";
    }

    @Override
    public String label() {
        return "Triangle";
    }

    @Override
    public String explanation() {
        return "Three cutting edges; flexible, with ample room for chips.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(
                new FamilyParameter(
                        "sagitta",
                        "Bow of the sides",
                        "d",
                        -0.09,
                        0.17,
                        0,
                        0.01,
                        false,
                        "Height of each side over its chord: positive bulges outwards, negative hollows the side, 0 is straight."));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        return Drawings.regular(3, 90, value(shape, "sagitta"));
    }
}
