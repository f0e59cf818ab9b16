package org.taperwright.mechanics.section.families;

import java.util.List;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;

/** Rhombus with diagonals 1 along x and q along y. */
public final class Rhombus implements SectionFamily {
    @Override
    public String id() {
        return "rhombus";
    }

    @Override
    public String label() {
        return "Rhombus";
    }

    @Override
    public String explanation() {
        return "Two cutting edges on the long diagonal; the short corners stand clear of the wall and leave room for chips.";
    }

    @Override
    public List<FamilyParameter> parameters() {
        return List.of(new FamilyParameter(
                "shortDiagonal",
                "Short diagonal",
                "d",
                0.2,
                1,
                0.7,
                0.01,
                false,
                "The diagonal across the cutting edges."));
    }

    @Override
    public OutlineResult outline(SectionShape shape) {
        double half = value(shape, "shortDiagonal") / 2;
        return Drawings.polygon(
                List.of(new Point(0.5, 0), new Point(0, half), new Point(-0.5, 0), new Point(0, -half)), 0);
    }
}
