package org.taperwright.mechanics.section.families;

import java.util.List;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;

/** Square with corners on the circle at 45°, 135°, 225° and 315°; sides straight or arcs of one sagitta. */
public final class Square implements SectionFamily {
    @Override
    public String id() {
        return "square";
    }

    @Override
    public String label() {
        return "Square";
    }

    @Override
    public String explanation() {
        return "Four cutting edges; stiff and strong in torsion, with little room for chips.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(
                new FamilyParameter(
                        "sagitta",
                        "Bow of the sides",
                        "d",
                        -0.12,
                        0.09,
                        0,
                        0.01,
                        false,
                        "Height of each side over its chord: positive bulges outwards, negative hollows the side, 0 is straight."));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        return Drawings.regular(4, 45, value(shape, "sagitta"));
    }
}
